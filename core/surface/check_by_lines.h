// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/surface/draw_water.h"
#include "core/surface/line_check.h"

#include <span>
#include <string>
#include <vector>

namespace surface {

/// How to hold out.
struct LineCheckSettings {
    /// How to draw; the trust is never drawn here.
    DrawSettings draw;
    /// Soundings of one track in a stretch that is held out together, 1 to 100000. 60: at a
    /// sounding each second a minute of sailing, so that neighbours on the track do not give it
    /// away.
    int stretch = 60;
    /// In how many drawings the stretches are held out in turn, 2 to 50. 6: each sounding once, a
    /// sixth at a time.
    int folds = 6;
};

/// One sentence for each setting out of its range; none where all is well.
[[nodiscard]] std::vector<std::string> problemsIn(const LineCheckSettings& settings);

/// Draws the water `folds` times, each time without a part of the stretches, and compares the
/// drawing with what was held out. Spikes that the drawing leaves out are not compared.
/// \return what drawWater() returns; unusableInput where there are fewer stretches than folds.
[[nodiscard]] base::Result<LineCheck>
checkByLines(const geo::Outline& outline, std::span<const soundings::KeptSounding> soundings,
             const LineCheckSettings& settings, base::Progress& progress);

} // namespace surface

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/geo/outline.h"
#include "core/soundings/sounding.h"
#include "core/surface/drawn_water.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace surface {

/// What the drawing may be told. What is absent is chosen from the data and stated in the report.
struct DrawSettings {
    /// Side of a cell, 0.5 to 100 m. Absent: chosen from the size of the water and the spacing of
    /// the soundings, 1 to 20 m, about 5 m for a few hundred acres, at most a million cells.
    std::optional<units::Length> cell;
    /// `a`, 1 to 1e6: how much a bend of the bottom costs against a misfit. Absent: chosen from
    /// 30, 100, 300, 1000 and 3000 by held-out soundings; a wrong one can treble the error.
    std::optional<double> stiffness;
    /// `b2`, 0 to 1000: extra stiffness along contours, because bottoms change slowly along them.
    /// Absent: chosen together with the stiffness.
    std::optional<double> contourStiffness;
    /// How far the outline may be off across the shore, 0 to 50 m. 5 m: an outline traced from a
    /// picture is off by metres, and its errors go together along the shore.
    units::Length shoreOffset = units::Length::metres(5.0);
    /// Standard error of one sounding that does not grow with depth, 0.01 to 2 m. 0.08 m: the 0.1 m
    /// step of a common sounder and the boat's heave.
    units::Length soundingError = units::Length::metres(0.08);
    /// Standard error of one sounding as a share of its depth, 0 to 0.2. 0.006: the cone and the
    /// speed of sound.
    double soundingErrorShare = 0.006;
    /// Threads to use, 1 to 64. 2: the drawing is the same for any number.
    int threads = 2;
    /// Draw the trust too. Off for a quick look: every half-width is then infinite, every cell a
    /// guess.
    bool withTrust = true;
};

/// One sentence for each setting out of its range; none where all is well.
[[nodiscard]] std::vector<std::string> problemsIn(const DrawSettings& settings);

/// Draws the bottom of the whole water from its outline and the soundings kept: a surface of least
/// bending, free at the shore, stiff along contours, about a trend of depth with the distance to
/// the shore, that lies within the error of soundings and shore; then how far it can be trusted,
/// from soundings held out. Never below depth 0; never deeper than 1.15 times the deepest kept
/// sounding within 500 m of a cell (of all soundings, where there is none that near), and 0.5 m.
///
/// Thin plate as a minimum of energy: Briggs 1974, Geophysics 39 (1); natural boundaries and
/// multigrid: Terzopoulos 1983. Growth about linear in cells.
///
/// \param soundings in the outline's frame; soundings of a pass follow one another.
/// \param before an earlier drawing of the same water, or null. After a change of a few soundings
/// or a bit of shore (less than 1 in 50 of either, with the same cell) its stiffness and trust
/// curve are kept, and the bottom is drawn on from its own: a matter of half the time, and the same
/// within a few centimetres. After anything more it is drawn as if there were none.
/// \return wrongUse for settings out of range or a cell that would need too many of them;
/// unusableInput where there is no sounding, none inside the shore, or one that is no number;
/// cancelled. The same result whatever the number of threads.
[[nodiscard]] base::Result<DrawnWater> drawWater(const geo::Outline& outline,
                                                 std::span<const soundings::KeptSounding> soundings,
                                                 const DrawSettings& settings,
                                                 base::Progress& progress,
                                                 const DrawnWater* before = nullptr);

} // namespace surface

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geo/water_frame.h"
#include "core/grid/depth_grid.h"
#include "core/soundings/lead_line.h"
#include "core/weed/weed_note.h"

#include <chrono>
#include <optional>
#include <span>
#include <vector>

namespace weed {

/// What was found at one place, from whatever source, in numbers.
struct Finding {
    geo::WaterPoint place;
    double depth_m = 0.0;
    double weed = 0.0;   ///< How much it says for weed, 0 to 1.
    double weight = 1.0; ///< In notes.
    std::optional<double> height_m{};
    /// How much of its note it is: of the water at that depth elsewhere, a line or an area tells no
    /// more than one note does.
    double shareOfNote = 1.0;
};

/// The findings inside the water.
struct Evidence {
    std::vector<Finding> findings;
    std::size_t notesUsed = 0;
    std::size_t notesOutside = 0;
    std::size_t notesFaded = 0; ///< Of those used.
};

/// Notes and lead line as findings. A note of none speaks against weed, thin for it by four fifths
/// (it may be a stray stem), thick wholly. A lead that brings up weed counts as a note; one that
/// comes up clean as half a note against it, for it touches one spot; one that tells nothing of the
/// bottom, as nothing. A line or an area speaks at places along and within it, and every note by
/// what it is worth in `year`. \param usualHeight_m of thick weed whose
/// height was not noted; thin weed stands a quarter as high.
[[nodiscard]] Evidence gathered(std::span<const WeedNote> notes,
                                std::span<const soundings::LeadLineSounding> leadLine,
                                const geo::WaterFrame& frame, const grid::DepthGrid& depth,
                                double usualHeight_m, std::optional<std::chrono::year> year);

} // namespace weed

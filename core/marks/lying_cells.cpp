// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/marks/lying_cells.h"

#include <algorithm>

namespace marks {

base::Result<LyingCells> LyingCells::of(const MarkInput& input, const Plan& plan,
                                        const ProposeSettings& settings, base::Progress& progress) {
    if (auto checked = checkSettings(settings, plan); !checked) {
        return std::unexpected(checked.error());
    }
    const grid::DepthGrid& today = input.ground.today();
    const grid::GridFrame& frame = today.frame();
    LyingCells out;
    out.clearance_ = Clearance::of(input, roomFor(plan, settings));
    out.what_ = grid::Grid<std::uint8_t>(frame, land);
    for (int row = 0; row < frame.rows(); ++row) {
        if (progress.stopAsked()) {
            return std::unexpected(base::cancelled());
        }
        for (int col = 0; col < frame.cols(); ++col) {
            const grid::Cell c{col, row};
            if (!today.has(c)) {
                continue;
            }
            const auto excluded =
                exclusionAt(input, frame.centre(c), plan, settings, &out.clearance_);
            out.what_[c] =
                excluded ? static_cast<std::uint8_t>(open + 1U + static_cast<unsigned>(*excluded))
                         : open;
        }
    }
    return out;
}

ExcludedAreas LyingCells::excludedAreas() const {
    std::array<std::size_t, allExclusions.size()> cells{};
    for (const std::uint8_t what : what_.values()) {
        if (what > open) {
            ++cells[what - open - 1U];
        }
    }
    ExcludedAreas areas;
    std::ranges::transform(cells, areas.begin(), [this](std::size_t count) {
        return units::Area::squareMetres(static_cast<double>(count) * frame().cellArea_m2());
    });
    return areas;
}

} // namespace marks

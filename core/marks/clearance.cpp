// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/marks/clearance.h"

#include <cmath>

namespace marks {

namespace {

using Cells = grid::Grid<std::uint8_t>;

/// Walks along one line of cells and marks those within `reach` of a marked one, or of the end of
/// the frame, as far as they were passed.
class Shadow {
public:
    explicit Shadow(int reach) : reach_(reach) {}
    void pass(std::uint8_t isSource, std::uint8_t& shaded) {
        away_ = isSource != 0 ? 0 : away_ + 1;
        shaded = shaded != 0 || away_ <= reach_ ? 1 : 0;
    }

private:
    int reach_;
    int away_ = 0; ///< Outside the frame lies nothing that is known.
};

void growAlongRows(Cells& cells, int reach) {
    const Cells sources = cells;
    const grid::GridFrame& frame = cells.frame();
    for (int row = 0; row < frame.rows(); ++row) {
        Shadow east(reach);
        for (int col = 0; col < frame.cols(); ++col) {
            east.pass(sources[grid::Cell{col, row}], cells[grid::Cell{col, row}]);
        }
        Shadow west(reach);
        for (int col = frame.cols() - 1; col >= 0; --col) {
            west.pass(sources[grid::Cell{col, row}], cells[grid::Cell{col, row}]);
        }
    }
}

/// Row after row, as the cells lie in memory.
void growAlongColumns(Cells& cells, int reach) {
    const Cells sources = cells;
    const grid::GridFrame& frame = cells.frame();
    const auto passRow = [&](std::vector<Shadow>& shadows, int row) {
        for (int col = 0; col < frame.cols(); ++col) {
            const grid::Cell c{col, row};
            shadows[static_cast<std::size_t>(col)].pass(sources[c], cells[c]);
        }
    };
    std::vector<Shadow> south(static_cast<std::size_t>(frame.cols()), Shadow(reach));
    for (int row = 0; row < frame.rows(); ++row) {
        passRow(south, row);
    }
    std::vector<Shadow> north(static_cast<std::size_t>(frame.cols()), Shadow(reach));
    for (int row = frame.rows() - 1; row >= 0; --row) {
        passRow(north, row);
    }
}

void grow(Cells& cells, int reach) {
    growAlongRows(cells, reach);
    growAlongColumns(cells, reach);
}

/// Cells without water today, and those that the shore passes, to a quarter of a cell.
Cells banksOf(const MarkInput& input) {
    const grid::DepthGrid& today = input.ground.today();
    const grid::GridFrame& frame = today.frame();
    Cells banks(frame, 0);
    for (std::size_t i = 0; i < banks.size(); ++i) {
        banks[i] = today.has(i) ? 0 : 1;
    }
    for (const geo::ShoreSegment& piece : input.outline.segments()) {
        const double length_m = geo::distance_m(piece.a, piece.b);
        const int steps = static_cast<int>(std::ceil(2.0 * length_m / frame.cell_m())) + 1;
        for (int k = 0; k <= steps; ++k) {
            const double t = static_cast<double>(k) / steps;
            const grid::Cell c = frame.cellOf({piece.a.x_m + t * (piece.b.x_m - piece.a.x_m),
                                               piece.a.y_m + t * (piece.b.y_m - piece.a.y_m)});
            if (frame.holds(c)) {
                banks[c] = 1;
            }
        }
    }
    return banks;
}

} // namespace

Clearance Clearance::of(const MarkInput& input, units::Length room) {
    const grid::GridFrame& frame = input.ground.frame();
    // A cell more than the room: the shore may cut a corner that was not marked.
    const int reach = static_cast<int>(std::ceil(room.inMetres() / frame.cell_m())) + 1;
    Clearance out;
    out.nearBank_ = banksOf(input);
    grow(out.nearBank_, reach);
    out.nearClosed_ = Cells(frame, 0);
    bool isAnyClosed = false;
    for (std::size_t i = 0; i < frame.size(); ++i) {
        out.nearClosed_[i] = input.ground.isClosed(frame.cellAt(i)) ? 1 : 0;
        isAnyClosed = isAnyClosed || out.nearClosed_[i] != 0;
    }
    if (isAnyClosed) {
        grow(out.nearClosed_, reach);
    }
    return out;
}

} // namespace marks

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/grid/connected_pieces.h"

#include <algorithm>

namespace grid {

namespace {

/// Labels given while the cells are gone through row by row, and which of them are one piece: each
/// leads to a lower one until the lowest, which the piece's first cell got.
class Labels {
public:
    std::int32_t fresh() {
        lower_.push_back(static_cast<std::int32_t>(lower_.size()));
        return lower_.back();
    }
    std::int32_t lowest(std::int32_t label) {
        while (at(label) != label) {
            at(label) = at(at(label));
            label = at(label);
        }
        return label;
    }
    void join(std::int32_t a, std::int32_t b) {
        a = lowest(a);
        b = lowest(b);
        at(std::max(a, b)) = std::min(a, b);
    }
    /// Numbers without gaps, in the order of the lowest labels.
    std::vector<std::int32_t> numbers(std::int32_t& count) {
        std::vector<std::int32_t> number(lower_.size());
        count = 0;
        for (std::size_t k = 0; k < lower_.size(); ++k) {
            const auto label = static_cast<std::int32_t>(k);
            const std::int32_t root = lowest(label);
            number[k] = root == label ? count++ : number[static_cast<std::size_t>(root)];
        }
        return number;
    }

private:
    std::int32_t& at(std::int32_t label) { return lower_[static_cast<std::size_t>(label)]; }
    std::vector<std::int32_t> lower_;
};

void label(const Grid<std::int32_t>& classOfCell, PieceGrid& labelOfCell, Labels& labels) {
    const GridFrame& f = classOfCell.frame();
    const auto cols = static_cast<std::size_t>(f.cols());
    std::size_t i = 0;
    for (int row = 0; row < f.rows(); ++row) {
        for (int col = 0; col < f.cols(); ++col, ++i) {
            const std::int32_t own = classOfCell[i];
            if (own < 0) {
                continue;
            }
            const bool west = col > 0 && classOfCell[i - 1] == own;
            const bool north = row > 0 && classOfCell[i - cols] == own;
            if (!west && !north) {
                labelOfCell[i] = labels.fresh();
                continue;
            }
            labelOfCell[i] = labelOfCell[west ? i - 1 : i - cols];
            if (west && north && labelOfCell[i - cols] != labelOfCell[i]) {
                labels.join(labelOfCell[i - cols], labelOfCell[i]);
            }
        }
    }
}

} // namespace

ConnectedPieces connectedPieces(const Grid<std::int32_t>& classOfCell) {
    ConnectedPieces out{PieceGrid(classOfCell.frame(), -1), {}};
    Labels labels;
    label(classOfCell, out.pieceOfCell, labels);
    std::int32_t count = 0;
    const std::vector<std::int32_t> numbers = labels.numbers(count);
    std::vector<std::size_t> sizes(static_cast<std::size_t>(count), 0);
    for (std::int32_t& piece : out.pieceOfCell.values()) {
        if (piece >= 0) {
            piece = numbers[static_cast<std::size_t>(piece)];
            ++sizes[static_cast<std::size_t>(piece)];
        }
    }
    out.cells.resize(sizes.size());
    for (std::size_t p = 0; p < sizes.size(); ++p) {
        out.cells[p].reserve(sizes[p]);
    }
    for (std::size_t i = 0; i < out.pieceOfCell.size(); ++i) {
        if (out.pieceOfCell[i] >= 0) {
            out.cells[static_cast<std::size_t>(out.pieceOfCell[i])].push_back(i);
        }
    }
    return out;
}

} // namespace grid

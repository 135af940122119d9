// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sections/water_graph.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace sections {

namespace {

/// Numbers the parts of blocks: a cell's class is its block, so that pieces never reach over a
/// block's edge.
grid::ConnectedPieces lumpsOf(const grid::Grid<std::uint8_t>& isFishable, int blockCells) {
    const grid::GridFrame& f = isFishable.frame();
    const int blocksAcross = (f.cols() + blockCells - 1) / blockCells;
    grid::Grid<std::int32_t> block(f, -1);
    std::size_t i = 0;
    for (int row = 0; row < f.rows(); ++row) {
        for (int col = 0; col < f.cols(); ++col, ++i) {
            if (isFishable[i] != 0) {
                block[i] = (row / blockCells) * blocksAcross + col / blockCells;
            }
        }
    }
    return grid::connectedPieces(block);
}

/// That two cells of different nodes touch.
struct Contact {
    std::int32_t a = 0;
    std::int32_t b = 0; ///< Negative: not fishable.
    bool alongSide = true;
    bool isWay = true;
};

class Contacts {
public:
    explicit Contacts(WaterGraph& graph) : graph_(graph) {
        const double cell_m = graph.nodeOfCell.frame().cell_m();
        side_m_ = sideBorder_m(cell_m);
        corner_m_ = cornerBorder_m(cell_m);
    }

    void find() {
        const grid::GridFrame& f = graph_.nodeOfCell.frame();
        for (int row = -1; row < f.rows(); ++row) {
            for (int col = -1; col < f.cols(); ++col) {
                const std::int32_t here = at(col, row);
                const std::int32_t east = at(col + 1, row);
                const std::int32_t south = at(col, row + 1);
                const std::int32_t across = at(col + 1, row + 1);
                if (here == east && here == south && here == across) {
                    continue;
                }
                const bool isOpen = here >= 0 && east >= 0 && south >= 0 && across >= 0;
                take({here, east});
                take({here, south});
                take({here, across, false, isOpen});
                take({east, south, false, isOpen});
            }
        }
    }

    void layAll() {
        std::sort(found_.begin(), found_.end(), [](const Contact& p, const Contact& q) {
            return p.a != q.a ? p.a < q.a : p.b < q.b;
        });
        for (auto from = found_.begin(); from != found_.end();) {
            const auto to = std::find_if(from, found_.end(), [&](const Contact& c) {
                return c.a != from->a || c.b != from->b;
            });
            lay(from, to);
            from = to;
        }
    }

private:
    [[nodiscard]] std::int32_t at(int col, int row) const {
        const grid::Cell c{col, row};
        return graph_.nodeOfCell.frame().holds(c) ? graph_.nodeOfCell[c] : -1;
    }
    void take(Contact c) {
        if (c.a == c.b) {
            return;
        }
        if (c.a > c.b) {
            std::swap(c.a, c.b);
        }
        if (c.a >= 0) {
            found_.push_back(c);
        } else {
            graph_.nodes[static_cast<std::size_t>(c.b)].sums.border_m += length_m(c);
        }
    }
    [[nodiscard]] double length_m(const Contact& c) const {
        return c.alongSide ? side_m_ : corner_m_;
    }
    /// The step between two nodes from all contacts between their cells.
    void lay(std::vector<Contact>::const_iterator first,
             std::vector<Contact>::const_iterator last) {
        WaterNode& from = graph_.nodes[static_cast<std::size_t>(first->a)];
        WaterNode& to = graph_.nodes[static_cast<std::size_t>(first->b)];
        WaterStep step{first->b, static_cast<float>(geo::distance_m(from.middle(), to.middle())),
                       0.0F, false, false};
        for (auto c = first; c != last; ++c) {
            step.border_m += static_cast<float>(length_m(*c));
            step.alongSide = step.alongSide || c->alongSide;
            step.isWay = step.isWay || c->isWay;
        }
        from.steps.push_back(step);
        step.to = first->a;
        to.steps.push_back(step);
    }

    WaterGraph& graph_;
    double side_m_ = 0.0;
    double corner_m_ = 0.0;
    std::vector<Contact> found_;
};

} // namespace

double sideBorder_m(double cell_m) {
    return std::numbers::pi / 8.0 * cell_m;
}

double cornerBorder_m(double cell_m) {
    return std::numbers::pi / 8.0 * cell_m / std::numbers::sqrt2;
}

PartSums sumsOfCell(const grid::DepthGrid& depth, const grid::Mask& mask, std::size_t cell) {
    constexpr float leastShare = 0.01F;
    const grid::GridFrame& f = depth.frame();
    const geo::WaterPoint p = f.centre(f.cellAt(cell));
    const double area_m2 =
        static_cast<double>(std::max(mask.share(cell), leastShare)) * f.cellArea_m2();
    const double depth_m = static_cast<double>(depth.raw_m()[cell]);
    PartSums s;
    s.area_m2 = area_m2;
    s.x_m3 = area_m2 * p.x_m;
    s.y_m3 = area_m2 * p.y_m;
    s.depth_m3 = area_m2 * depth_m;
    s.depthSquares_m4 = area_m2 * depth_m * depth_m;
    return s;
}

WaterGraph graphOf(const grid::DepthGrid& depth, const grid::Mask& mask,
                   const grid::Grid<std::uint8_t>& isFishable, int blockCells) {
    WaterGraph graph;
    grid::ConnectedPieces lumps = lumpsOf(isFishable, blockCells);
    graph.nodeOfCell = std::move(lumps.pieceOfCell);
    graph.cellsOfNode = std::move(lumps.cells);
    graph.nodes.resize(graph.cellsOfNode.size());
    for (std::size_t n = 0; n < graph.nodes.size(); ++n) {
        for (const std::size_t cell : graph.cellsOfNode[n]) {
            graph.nodes[n].sums.add(sumsOfCell(depth, mask, cell));
        }
    }
    Contacts contacts(graph);
    contacts.find();
    contacts.layAll();
    return graph;
}

} // namespace sections

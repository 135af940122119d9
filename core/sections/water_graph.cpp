// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sections/water_graph.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>

namespace sections {

namespace {

/// A change of depth of this much over one block makes a border as cheap as the feature weight
/// says.
constexpr double tellingStep_m = 1.0;

/// Numbers the parts of blocks: a cell's class is its block, so that pieces never reach over a
/// block's edge.
grid::ConnectedPieces lumpsOf(const grid::Grid<std::uint8_t>& isFishable, int blockCells) {
    const grid::GridFrame& f = isFishable.frame();
    const int blocksAcross = (f.cols() + blockCells - 1) / blockCells;
    grid::Grid<std::int32_t> block(f, -1);
    for (std::size_t i = 0; i < block.size(); ++i) {
        if (isFishable[i] != 0) {
            const grid::Cell c = f.cellAt(i);
            block[i] = (c.row / blockCells) * blocksAcross + c.col / blockCells;
        }
    }
    return grid::connectedPieces(block);
}

void fillNodes(const grid::ConnectedPieces& lumps, const grid::DepthGrid& depth,
               const grid::Mask& mask, WaterGraph& graph) {
    const grid::GridFrame& f = depth.frame();
    for (const std::vector<std::size_t>& cells : lumps.cells) {
        WaterNode node;
        for (const std::size_t i : cells) {
            const geo::WaterPoint p = f.centre(f.cellAt(i));
            node.area_m2 += static_cast<double>(mask.share(i)) * f.cellArea_m2();
            node.depth_m += static_cast<double>(depth.raw_m()[i]);
            node.middle.x_m += p.x_m;
            node.middle.y_m += p.y_m;
        }
        const auto count = static_cast<double>(cells.size());
        node.depth_m /= count;
        node.middle = {node.middle.x_m / count, node.middle.y_m / count};
        graph.nodes.push_back(std::move(node));
    }
}

/// Cells along which each pair of nodes touches.
std::map<std::pair<std::int32_t, std::int32_t>, int> contactsOf(const WaterGraph& graph) {
    std::map<std::pair<std::int32_t, std::int32_t>, int> contacts;
    const grid::GridFrame& f = graph.nodeOfCell.frame();
    for (std::size_t i = 0; i < graph.nodeOfCell.size(); ++i) {
        const grid::Cell c = f.cellAt(i);
        for (const grid::Cell next : {grid::Cell{c.col + 1, c.row}, grid::Cell{c.col, c.row + 1}}) {
            if (!f.holds(next)) {
                continue;
            }
            const std::int32_t a = graph.nodeOfCell[i];
            const std::int32_t b = graph.nodeOfCell[next];
            if (a >= 0 && b >= 0 && a != b) {
                ++contacts[std::minmax(a, b)];
            }
        }
    }
    return contacts;
}

void layStep(WaterGraph& graph, std::int32_t a, std::int32_t b, double border_m,
             double featureWeight) {
    WaterNode& from = graph.nodes[static_cast<std::size_t>(a)];
    WaterNode& to = graph.nodes[static_cast<std::size_t>(b)];
    const double change = std::fabs(from.depth_m - to.depth_m) / tellingStep_m;
    const auto cut_m = static_cast<float>(border_m / (1.0 + featureWeight * std::min(change, 1.0)));
    const auto length_m = static_cast<float>(geo::distance_m(from.middle, to.middle));
    from.steps.push_back({b, length_m, cut_m});
    to.steps.push_back({a, length_m, cut_m});
}

/// Steps across corners, where both ways round the corner are open water: without them all
/// distances would be those of a town of square blocks. They carry no border.
void layDiagonals(WaterGraph& graph,
                  const std::map<std::pair<std::int32_t, std::int32_t>, int>& contacts) {
    const grid::GridFrame& f = graph.nodeOfCell.frame();
    std::map<std::pair<std::int32_t, std::int32_t>, bool> seen;
    for (int row = 0; row + 1 < f.rows(); ++row) {
        for (int col = 0; col + 1 < f.cols(); ++col) {
            const std::array corner{graph.nodeOfCell[grid::Cell{col, row}],
                                    graph.nodeOfCell[grid::Cell{col + 1, row}],
                                    graph.nodeOfCell[grid::Cell{col, row + 1}],
                                    graph.nodeOfCell[grid::Cell{col + 1, row + 1}]};
            if (std::any_of(corner.begin(), corner.end(), [](std::int32_t n) { return n < 0; })) {
                continue;
            }
            for (const auto& [a, b] :
                 {std::pair{corner[0], corner[3]}, std::pair{corner[1], corner[2]}}) {
                const auto key = std::minmax(a, b);
                if (a != b && !contacts.contains(key) && !std::exchange(seen[key], true)) {
                    layStep(graph, key.first, key.second, 0.0, 0.0);
                }
            }
        }
    }
}

} // namespace

WaterGraph graphOf(const grid::DepthGrid& depth, const grid::Mask& mask,
                   const grid::Grid<std::uint8_t>& isFishable, int blockCells,
                   double featureWeight) {
    WaterGraph graph;
    const grid::ConnectedPieces lumps = lumpsOf(isFishable, blockCells);
    graph.nodeOfCell = lumps.pieceOfCell;
    fillNodes(lumps, depth, mask, graph);
    const auto contacts = contactsOf(graph);
    for (const auto& [pair, cells] : contacts) {
        layStep(graph, pair.first, pair.second, cells * depth.frame().cell_m(), featureWeight);
    }
    layDiagonals(graph, contacts);
    return graph;
}

} // namespace sections

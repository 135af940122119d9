// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/sections/water_graph.h"

#include <span>

namespace sections {

/// The lumps of the water as ground whose borders can settle (BorderSettling).
class LumpGround {
public:
    /// \param partOfNode not negative; changed as pieces move. Both outlive this.
    LumpGround(const WaterGraph& graph, std::vector<std::int32_t>& partOfNode)
        : graph_(graph), part_(partOfNode) {}

    [[nodiscard]] std::size_t size() const { return part_.size(); }
    [[nodiscard]] std::int32_t partOf(std::size_t v) const { return part_[v]; }
    void setPart(std::size_t v, std::int32_t part) { part_[v] = part; }
    [[nodiscard]] PartSums sumsOf(std::size_t v) const { return graph_.nodes[v].sums; }
    template <class F>
    void each(std::size_t v, F f) const {
        f(std::int64_t{-1}, graph_.nodes[v].sums.border_m);
        for (const WaterStep& step : graph_.nodes[v].steps) {
            f(std::int64_t{step.to}, static_cast<double>(step.border_m));
        }
    }
    template <class F>
    void eachSide(std::size_t v, F f) const {
        for (const WaterStep& step : graph_.nodes[v].steps) {
            if (step.alongSide) {
                f(static_cast<std::size_t>(step.to));
            }
        }
    }
    /// True where the lumps of its part round v hang together without it, as far as a short look
    /// round tells: a long way round does not count.
    [[nodiscard]] bool hangsTogetherWithout(std::size_t v) const;

private:
    const WaterGraph& graph_;
    std::vector<std::int32_t>& part_;
};

/// The sums of each part, border included.
[[nodiscard]] std::vector<PartSums>
sumsOfParts(const WaterGraph& graph, std::span<const std::int32_t> partOfNode, std::size_t count);

} // namespace sections

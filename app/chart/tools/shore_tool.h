// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/chart/tools/tool.h"
#include "core/geo/lon_lat.h"

#include <vector>

namespace chart {

/// The corners of the shoreline under the hand: drag one to move it, click or drag the line between
/// two for a new one, Delete takes the chosen one away. Elsewhere the paper is moved as ever.
class ShoreTool : public Tool {
public:
    [[nodiscard]] Qt::CursorShape cursor() const override { return Qt::PointingHandCursor; }
    void takeContent(const ChartContent& content) override;
    void setReach(double reach_m) override { reach_m_ = reach_m; }
    [[nodiscard]] bool wants(geo::WaterPoint at) const override;
    [[nodiscard]] bool drawsWhileHeld() const override { return true; }
    std::optional<Made> press(geo::WaterPoint at) override;
    std::optional<Made> move(geo::WaterPoint at, bool isHeld) override;
    std::optional<Made> release(geo::WaterPoint at) override;
    std::optional<Made> remove() override;
    bool drop() override;
    void paint(QPainter& painter, const ViewFrame& view, const Palette& palette) const override;

private:
    /// One ring of the shoreline, in the water's frame.
    struct ShoreRing {
        std::size_t piece = 0;
        std::size_t ring = 0;
        geo::Ring corners;
    };
    /// What the hand holds.
    struct Hold {
        water::ShoreCorner corner; ///< Of a new corner: the one before it.
        geo::WaterPoint from;
        bool isNew = false;
        bool isMoved = false;
    };

    [[nodiscard]] std::optional<water::ShoreCorner> cornerAt(geo::WaterPoint at) const;
    [[nodiscard]] std::optional<water::ShoreCorner> lineAt(geo::WaterPoint at) const;
    [[nodiscard]] geo::Ring shownRing(const ShoreRing& ring) const;
    void paintCorners(QPainter& painter, const ViewFrame& view, const Palette& palette) const;

    std::vector<geo::LonLatPiece> shoreline_; ///< What the rings were made from.
    std::vector<ShoreRing> rings_;
    std::optional<water::ShoreCorner> chosen_;
    std::optional<Hold> hold_;
    geo::WaterPoint under_;
    double reach_m_ = 5.0;
};

} // namespace chart

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/chart/chart_content.h"
#include "app/side_view/cut.h"
#include "app/side_view/side_frame.h"

#include <QPainter>

#include <optional>
#include <vector>

namespace side_view {

/// A fish, or a lost run, seen from the side.
struct SideFish {
    double along_m = 0.0;
    std::optional<double> depth_m; ///< Of the bait; nothing: on the bottom.
    bool landed = true;
};

/// Everything that the side view draws: values only.
struct SideScene {
    Cut cut;
    std::optional<marks::Mark> mark; ///< With its boat, ropes and rods.
    std::optional<std::size_t> rod;  ///< The cut leads along the cast of this one of them.
    marks::Tackle tackle;
    contours::Bands bands;
    std::vector<SideFish> fish;
    wording::Words words{wording::Words()};
    chart::Inks inks = chart::Inks::light;
    std::optional<double> pointed_m; ///< Along, pointed at here or on the chart.
};

/// The cut through the mark of that rank, along its ropes, or along the cast of one of its rods; an
/// empty cut where there is none.
[[nodiscard]] SideScene sceneOfMark(const chart::ChartContent& content, int rank,
                                    std::optional<std::size_t> rod = {});
/// The same of a mark that lies as it is given, in the plan that is shown or not.
[[nodiscard]] SideScene sceneOfMark(const chart::ChartContent& content, const marks::Mark& mark,
                                    std::optional<std::size_t> rod = {});
/// The cut along a path, with the fish caught within 15 m of it.
[[nodiscard]] SideScene sceneAlong(const chart::ChartContent& content, const geo::Path& path);

/// How the scene lies in `box`.
[[nodiscard]] SideFrame frameOf(const SideScene& scene, const QRectF& box);
/// Water, bottom, trust, weed, boat, ropes, rods, fish. \param scale of letters and pens.
void paintScene(QPainter& painter, const SideScene& scene, const QRectF& box, double scale = 1.0);
/// The same in two parts: what stays while the pointer moves, and what follows it.
void paintStill(QPainter& painter, const SideScene& scene, const QRectF& box, double scale);
void paintPointer(QPainter& painter, const SideScene& scene, const QRectF& box, double scale);

} // namespace side_view

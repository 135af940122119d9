// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/chart/chart_content.h"
#include "app/chart/lie_part.h"
#include "app/chart/sounding_pick.h"
#include "app/chart/view_frame.h"

#include <optional>

namespace chart {

// What lies under a pixel; only what is shown can be picked.

/// The rank of the mark whose ring or boat is there.
[[nodiscard]] std::optional<int> markAt(const ChartContent& content, const ViewFrame& view,
                                        QPointF pixel);
/// What of a mark is there: the boat or its ring, or, of the chosen one where its ropes are drawn
/// and the plan holds, an anchor or a bait.
[[nodiscard]] std::optional<LiePart> liePartAt(const ChartContent& content, const ViewFrame& view,
                                               QPointF pixel);
/// The bait of the chosen mark that is there, by its rod's position.
[[nodiscard]] std::optional<std::size_t> rodAt(const ChartContent& content, const ViewFrame& view,
                                               QPointF pixel);
[[nodiscard]] std::optional<logbook::StayId> stayAt(const ChartContent& content,
                                                    const ViewFrame& view, QPointF pixel);
/// What is set aside goes before what is kept: its sign covers the dots of its neighbours.
[[nodiscard]] std::optional<SoundingPick> soundingAt(const ChartContent& content,
                                                     const ViewFrame& view, QPointF pixel);
/// The crossing whose dot is there, by its position among all.
[[nodiscard]] std::optional<std::size_t> crossingAt(const ChartContent& content,
                                                    const ViewFrame& view, QPointF pixel);
[[nodiscard]] std::optional<int> sectionAt(const ChartContent& content, const ViewFrame& view,
                                           QPointF pixel);
/// The zone of the family that is picked from (content.zonesPicked) there or a few pixels beside,
/// because drop-offs and weed edges are narrow; numbered as Selection::zone.
[[nodiscard]] std::optional<int> zoneAt(const ChartContent& content, const ViewFrame& view,
                                        QPointF pixel);

} // namespace chart

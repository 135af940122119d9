// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/chart/palette.h"
#include "app/chart/view_frame.h"
#include "core/geo/path.h"
#include "core/water/document/shore_corner.h"

#include <QPainter>

#include <memory>
#include <optional>
#include <variant>

namespace chart {

/// What the hand does on the chart.
enum class ToolKind {
    pan,     ///< Move the paper, pick things, drag a mark.
    cutLine, ///< Draw the line of a cut for the side view.
    note,    ///< Point at one place.
    polygon, ///< Go round by clicks: a shoreline, closed water.
    lasso,   ///< Go round with the button held: soundings to set aside.
    shore,   ///< Take hold of the corners of the shoreline.
    stroke,  ///< Draw a line with the button held: where a section is to be cut.
    measure, ///< How far it is from place to place, by clicks.
};

/// What a tool has made.
struct PointMade {
    geo::WaterPoint at;
};
struct LineMade {
    geo::WaterPoint from;
    geo::WaterPoint to;
};
struct RingMade {
    geo::Ring ring;
};
/// What was done to one corner of the shoreline.
struct ShoreMade {
    enum class Act { move, add, remove };
    Act act = Act::move;
    water::ShoreCorner corner; ///< Of a new one: the corner before it.
    geo::WaterPoint at;
};
struct StrokeMade {
    geo::Path line; ///< Of at least two points.
};
using Made = std::variant<PointMade, LineMade, RingMade, ShoreMade, StrokeMade>;

struct ChartContent;

/// One way of using the hand; knows water, not widgets.
class Tool {
public:
    Tool() = default;
    Tool(const Tool&) = delete;
    Tool& operator=(const Tool&) = delete;
    Tool(Tool&&) = delete;
    Tool& operator=(Tool&&) = delete;
    virtual ~Tool() = default;

    [[nodiscard]] virtual Qt::CursorShape cursor() const { return Qt::CrossCursor; }
    /// What the chart shows from now on.
    virtual void takeContent(const ChartContent& content) { static_cast<void>(content); }
    /// How far from the pointer a thing still counts as under it.
    virtual void setReach(double reach_m) { static_cast<void>(reach_m); }
    /// False where the hand may move the paper instead.
    [[nodiscard]] virtual bool wants(geo::WaterPoint at) const {
        static_cast<void>(at);
        return true;
    }
    /// True where things are drawn with the button held, and are whole when it is let go.
    [[nodiscard]] virtual bool drawsWhileHeld() const { return false; }
    virtual std::optional<Made> press(geo::WaterPoint at) = 0;
    virtual std::optional<Made> move(geo::WaterPoint at, bool isHeld) = 0;
    virtual std::optional<Made> release(geo::WaterPoint at) = 0;
    /// A double click or Enter: what is there is whole.
    virtual std::optional<Made> finish() { return std::nullopt; }
    /// Escape: start again. \return true where there was anything to drop.
    virtual bool drop() { return false; }
    /// The last point is taken back. \return true where there was one.
    virtual bool stepBack() { return false; }
    /// Delete: what is chosen is taken away.
    virtual std::optional<Made> remove() { return std::nullopt; }
    virtual void paint(QPainter& painter, const ViewFrame& view, const Palette& palette) const = 0;
};

/// The tool of that kind; nothing for pan, which is the canvas's own.
[[nodiscard]] std::unique_ptr<Tool> makeTool(ToolKind kind);

} // namespace chart

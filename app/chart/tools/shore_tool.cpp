// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/tools/shore_tool.h"

#include "app/chart/chart_content.h"
#include "app/chart/water_path.h"

#include <cmath>

namespace chart {

namespace {

/// Where more corners than this are in sight, only those near the pointer are shown.
constexpr int mostCornersShown = 400;
constexpr double nearPointer_pixels = 70.0;
constexpr double cornerRadius = 4.0;

} // namespace

void ShoreTool::takeContent(const ChartContent& content) {
    if (!content.water || !content.water->frame || content.water->shoreline == shoreline_) {
        return;
    }
    shoreline_ = content.water->shoreline;
    rings_.clear();
    hold_.reset();
    const geo::WaterFrame& frame = *content.water->frame;
    for (std::size_t p = 0; p < shoreline_.size(); ++p) {
        const geo::LonLatPiece& piece = shoreline_[p];
        rings_.push_back({p, 0, frame.toWater(piece.outer)});
        for (std::size_t k = 0; k < piece.islands.size(); ++k) {
            rings_.push_back({p, k + 1, frame.toWater(piece.islands[k])});
        }
    }
    const auto isThere = [this](water::ShoreCorner corner) {
        return std::any_of(rings_.begin(), rings_.end(), [corner](const ShoreRing& ring) {
            return ring.piece == corner.piece && ring.ring == corner.ring &&
                   corner.corner < ring.corners.size();
        });
    };
    if (chosen_ && !isThere(*chosen_)) {
        chosen_.reset();
    }
}

std::optional<water::ShoreCorner> ShoreTool::cornerAt(geo::WaterPoint at) const {
    std::optional<water::ShoreCorner> nearest;
    double least_m = reach_m_;
    for (const ShoreRing& ring : rings_) {
        for (std::size_t i = 0; i < ring.corners.size(); ++i) {
            const double away_m = geo::distance_m(ring.corners[i], at);
            if (away_m <= least_m) {
                least_m = away_m;
                nearest = water::ShoreCorner{ring.piece, ring.ring, i};
            }
        }
    }
    return nearest;
}

std::optional<water::ShoreCorner> ShoreTool::lineAt(geo::WaterPoint at) const {
    std::optional<water::ShoreCorner> nearest;
    double least_m = reach_m_;
    for (const ShoreRing& ring : rings_) {
        for (std::size_t i = 0; i < ring.corners.size(); ++i) {
            const double away_m = geo::distanceToSegment_m(
                at, ring.corners[i], ring.corners[(i + 1) % ring.corners.size()]);
            if (away_m <= least_m) {
                least_m = away_m;
                nearest = water::ShoreCorner{ring.piece, ring.ring, i};
            }
        }
    }
    return nearest;
}

bool ShoreTool::wants(geo::WaterPoint at) const {
    return cornerAt(at) || lineAt(at);
}

std::optional<Made> ShoreTool::press(geo::WaterPoint at) {
    under_ = at;
    if (const auto corner = cornerAt(at)) {
        chosen_ = corner;
        hold_ = Hold{*corner, at, false, false};
    } else if (const auto before = lineAt(at)) {
        chosen_.reset();
        hold_ = Hold{*before, at, true, false};
    }
    return std::nullopt;
}

std::optional<Made> ShoreTool::move(geo::WaterPoint at, bool isHeld) {
    under_ = at;
    if (!isHeld) {
        hold_.reset();
    } else if (hold_ && geo::distance_m(hold_->from, at) > 0.4 * reach_m_) {
        hold_->isMoved = true;
    }
    return std::nullopt;
}

std::optional<Made> ShoreTool::release(geo::WaterPoint at) {
    under_ = at;
    const auto hold = std::exchange(hold_, std::nullopt);
    if (!hold || !(hold->isMoved || hold->isNew)) {
        return std::nullopt;
    }
    if (hold->isNew) {
        chosen_ =
            water::ShoreCorner{hold->corner.piece, hold->corner.ring, hold->corner.corner + 1};
        return ShoreMade{ShoreMade::Act::add, hold->corner, at};
    }
    return ShoreMade{ShoreMade::Act::move, hold->corner, at};
}

std::optional<Made> ShoreTool::remove() {
    if (!chosen_ || hold_) {
        return std::nullopt;
    }
    return ShoreMade{ShoreMade::Act::remove, *std::exchange(chosen_, std::nullopt), {}};
}

bool ShoreTool::drop() {
    const bool hadAny = hold_.has_value() || chosen_.has_value();
    hold_.reset();
    chosen_.reset();
    return hadAny;
}

geo::Ring ShoreTool::shownRing(const ShoreRing& ring) const {
    geo::Ring corners = ring.corners;
    if (hold_ && hold_->corner.piece == ring.piece && hold_->corner.ring == ring.ring) {
        const auto at = static_cast<std::ptrdiff_t>(hold_->corner.corner);
        if (hold_->isNew) {
            corners.insert(corners.begin() + at + 1, under_);
        } else if (hold_->isMoved) {
            corners[hold_->corner.corner] = under_;
        }
    }
    corners.push_back(corners.front());
    return corners;
}

void ShoreTool::paintCorners(QPainter& painter, const ViewFrame& view,
                             const Palette& palette) const {
    const geo::Box sight = view.box();
    int inSight = 0;
    for (const ShoreRing& ring : rings_) {
        for (const geo::WaterPoint corner : ring.corners) {
            inSight += sight.holds(corner) ? 1 : 0;
        }
    }
    const QPointF pointer = view.toScreen(under_);
    painter.setPen(QPen(palette.rust, 1.6));
    for (const ShoreRing& ring : rings_) {
        for (std::size_t i = 0; i < ring.corners.size(); ++i) {
            const QPointF at = view.toScreen(ring.corners[i]);
            const QPointF away = at - pointer;
            const bool isChosen = chosen_ == water::ShoreCorner{ring.piece, ring.ring, i};
            const bool isShown = isChosen || inSight <= mostCornersShown ||
                                 std::hypot(away.x(), away.y()) <= nearPointer_pixels;
            if (!sight.holds(ring.corners[i]) || !isShown) {
                continue;
            }
            painter.setBrush(isChosen ? palette.rust : palette.card);
            const double radius = isChosen ? cornerRadius + 1.0 : cornerRadius;
            painter.drawEllipse(at, radius, radius);
        }
    }
}

void ShoreTool::paint(QPainter& painter, const ViewFrame& view, const Palette& palette) const {
    painter.setBrush(Qt::NoBrush);
    for (const ShoreRing& ring : rings_) {
        if (ring.corners.empty()) {
            continue;
        }
        const QPolygonF line = screenLine(shownRing(ring), view, 0.0);
        painter.setPen(QPen(palette.card, 3.6));
        painter.drawPolyline(line);
        painter.setPen(QPen(palette.rust, 1.4));
        painter.drawPolyline(line);
    }
    paintCorners(painter, view, palette);
    if (hold_) {
        painter.setBrush(palette.rust);
        painter.drawEllipse(view.toScreen(under_), cornerRadius + 1.0, cornerRadius + 1.0);
    }
}

} // namespace chart

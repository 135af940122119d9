// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/chart_painter.h"

#include "app/chart/empty_chart.h"
#include "app/chart/first_track.h"
#include "app/chart/furniture.h"
#include "app/chart/key_room.h"
#include "app/chart/layers/backdrop_layer.h"
#include "app/chart/layers/change_layer.h"
#include "app/chart/layers/closed_layer.h"
#include "app/chart/layers/contours_layer.h"
#include "app/chart/layers/crossings_layer.h"
#include "app/chart/layers/depth_layer.h"
#include "app/chart/layers/furniture_layer.h"
#include "app/chart/layers/graticule_layer.h"
#include "app/chart/layers/log_layer.h"
#include "app/chart/layers/marks_layer.h"
#include "app/chart/layers/next_lines_layer.h"
#include "app/chart/layers/places_layer.h"
#include "app/chart/layers/rates_layer.h"
#include "app/chart/layers/sections_layer.h"
#include "app/chart/layers/soundings_layer.h"
#include "app/chart/layers/structure_layer.h"
#include "app/chart/layers/weed_layer.h"
#include "app/chart/old_card.h"
#include "app/chart/todays_form.h"

#include <array>
#include <memory>

namespace chart {

namespace {

using Layers = std::array<std::unique_ptr<Layer>, allLayerKinds.size()>;

/// All layers in the order of LayerKind, from the bottom up.
const Layers& layers() {
    static const Layers all{std::make_unique<BackdropLayer>(),  std::make_unique<DepthLayer>(),
                            std::make_unique<RatesLayer>(),     std::make_unique<ChangeLayer>(),
                            std::make_unique<ContoursLayer>(),  std::make_unique<StructureLayer>(),
                            std::make_unique<WeedLayer>(),      std::make_unique<SectionsLayer>(),
                            std::make_unique<ClosedLayer>(),    std::make_unique<GraticuleLayer>(),
                            std::make_unique<SoundingsLayer>(), std::make_unique<CrossingsLayer>(),
                            std::make_unique<NextLinesLayer>(), std::make_unique<PlacesLayer>(),
                            std::make_unique<LogLayer>(),       std::make_unique<MarksLayer>(),
                            std::make_unique<FurnitureLayer>()};
    return all;
}

/// Whose letters go first where there is room for one only.
constexpr std::array letterOrder{LayerKind::furniture, LayerKind::marks,     LayerKind::sections,
                                 LayerKind::closed,    LayerKind::nextLines, LayerKind::places,
                                 LayerKind::graticule, LayerKind::structure, LayerKind::contours,
                                 LayerKind::log,       LayerKind::crossings, LayerKind::soundings,
                                 LayerKind::weed,      LayerKind::depth,     LayerKind::rates,
                                 LayerKind::change,    LayerKind::backdrop};
static_assert(letterOrder.size() == allLayerKinds.size());

} // namespace

LabelSpace paintChart(QPainter& painter, const ViewFrame& view, const ChartContent& content,
                      double scale) {
    LabelSpace labels(QRectF(QPointF(0.0, 0.0), view.size()));
    LayerContext on{painter, view, content, Palette::of(content.inks), labels, scale};
    const auto each = [&](LayerKind kind, auto&& act) {
        if (content.shown.contains(kind)) {
            painter.save();
            act(*layers()[static_cast<std::size_t>(kind)]);
            painter.restore();
        }
    };
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing, true);
    painter.setClipRect(QRectF(QPointF(0.0, 0.0), view.size()), Qt::IntersectClip);
    painter.fillRect(QRectF(QPointF(0.0, 0.0), view.size()), on.palette.paper);
    for (const LayerKind kind : allLayerKinds) {
        each(kind, [&](const Layer& layer) { layer.reserve(on); });
    }
    const auto waterLeft = waterLeftOf(content.derived, view);
    for (const LayerKind kind : allLayerKinds) {
        // Furniture stands on top of the letters too.
        if (kind != LayerKind::furniture) {
            each(kind, [&](const Layer& layer) {
                // What lies on the bottom ends where the water does.
                const bool isOnBottom = kind == LayerKind::rates || kind == LayerKind::change ||
                                        kind == LayerKind::structure || kind == LayerKind::weed ||
                                        kind == LayerKind::sections;
                if (waterLeft && isOnBottom) {
                    painter.setClipPath(*waterLeft, Qt::IntersectClip);
                }
                painter.setOpacity(strengthOf(content, kind));
                layer.paint(on);
            });
        }
    }
    if (showsFirstTrack(content)) {
        paintFirstTrack(on);
    }
    for (const LayerKind kind : letterOrder) {
        each(kind, [&](const Layer& layer) { layer.letter(on); });
    }
    each(LayerKind::furniture, [&](const Layer& layer) { layer.paint(on); });
    drawOldCard(on);
    painter.restore();
    return labels;
}

geo::Box extentOf(const ChartContent& content) {
    const geo::Box water = waterBoxOf(content);
    return water.isEmpty() && content.backdrop ? content.backdrop->whole : water;
}

geo::Box waterBoxOf(const ChartContent& content) {
    if (content.derived.outline) {
        return content.derived.outline->box();
    }
    geo::Box box;
    if (content.derived.checked) {
        for (const soundings::KeptSounding& sounding : content.derived.checked->kept) {
            box.take({sounding.x_m, sounding.y_m});
        }
    } else if (showsFirstTrack(content)) {
        for (const geo::WaterPoint place : *firstTrackOf(content)) {
            box.take(place);
        }
    }
    return box;
}

ViewFrame wholeWater(const ChartContent& content, QSizeF size, double scale) {
    const bool hasKey =
        content.shown.contains(LayerKind::furniture) && keyHasRoom(content, size, scale);
    const double right = hasKey ? keyWidth(scale) + 12.0 * scale : 0.0;
    // What is said above soundings that are not drawn yet.
    const double above = showsFirstTrack(content) ? firstHintHeight * scale : 0.0;
    const QSizeF room(std::max(size.width() - right, 1.0), std::max(size.height() - above, 1.0));
    return ViewFrame::showing(extentOf(content), room, 26.0 * scale)
        .resized(size)
        .panned({-0.5 * right, 0.5 * above});
}

std::set<LayerKind> usualLayers() {
    std::set<LayerKind> shown(allLayerKinds.begin(), allLayerKinds.end());
    for (const LayerKind kind :
         {LayerKind::soundings, LayerKind::crossings, LayerKind::log, LayerKind::graticule}) {
        shown.erase(kind);
    }
    return shown;
}

} // namespace chart

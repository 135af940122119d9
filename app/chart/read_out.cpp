// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/read_out.h"

#include "app/chart/depth_colours.h"
#include "app/wording/section_words.h"
#include "app/wording/tongue.h"
#include "app/wording/zone_words.h"

#include <QStringList>

namespace chart {

namespace {

QString textOf(std::string_view text) {
    return wording::Tongue::ofCore(std::string(text));
}

void addKind(QStringList& kinds, const structure::ZoneMap& map, geo::WaterPoint p) {
    const grid::Cell cell = map.zoneOfCell.frame().cellOf(p);
    if (!map.zoneOfCell.frame().holds(cell)) {
        return;
    }
    const structure::ZoneNumber number = map.zoneOfCell[cell];
    if (number >= 0 && static_cast<std::size_t>(number) < map.zones.size()) {
        kinds << wording::spoken(map.zones[static_cast<std::size_t>(number)].kind);
    }
}

QString sectionName(const sections::SectionMap& map, geo::WaterPoint p) {
    const sections::SectionNumber number = sections::sectionAt(map, p);
    return number == sections::noSection
               ? QString()
               : wording::nameCalled(map.sections[static_cast<std::size_t>(number)].name);
}

bool isLevelUnknown(const water::Derived& derived, geo::WaterPoint p) {
    if (!derived.levelUnknown) {
        return false;
    }
    const grid::Cell cell = derived.levelUnknown->frame().cellOf(p);
    return derived.levelUnknown->frame().holds(cell) && (*derived.levelUnknown)[cell] == 1;
}

} // namespace

QString ReadOut::line() const {
    QStringList parts;
    for (const QString& part : {depth.isEmpty() ? wording::Tongue::tr("land") : depth, trust, band,
                                zones, section, position}) {
        if (!part.isEmpty()) {
            parts << part;
        }
    }
    return parts.join(QStringLiteral("   "));
}

ReadOut readOutAt(const ChartContent& content, geo::WaterPoint p) {
    ReadOut out;
    const water::Derived& derived = content.derived;
    if (content.water && content.water->frame) {
        out.position = wording::Words::place(content.water->frame->toEarth(p));
    }
    if (!derived.drawn || (derived.outline && !derived.outline->contains(p))) {
        return out;
    }
    if (const auto chartDepth = derived.drawn->depth.at(p)) {
        const units::Depth today = *chartDepth + units::Depth::fromLength(riseOf(content));
        const contours::Bands& bands = bandsOf(content);
        const std::size_t band = bands.bandOf(today);
        out.depth =
            today.inMetres() > 0.0 ? content.words.depth(today) : wording::Tongue::tr("dry");
        out.band = content.words.depthRange(bands.from(band), bands.to(band));
    }
    const auto halfWidth = derived.drawn->trust.halfWidthAt(p);
    const auto name = derived.drawn->trust.at(p);
    if (halfWidth && name) {
        out.trust = QStringLiteral("%1, %2").arg(
            content.words.plusMinus(units::Depth::fromLength(*halfWidth)),
            textOf(surface::wordFor(*name)));
        if (isLevelUnknown(derived, p)) {
            out.trust += wording::Tongue::tr(", level of that day not known");
        }
    }
    QStringList kinds;
    if (derived.structure) {
        addKind(kinds, *derived.structure, p);
    }
    if (derived.weed) {
        addKind(kinds, derived.weed->zones, p);
    }
    out.zones = kinds.join(QStringLiteral(", "));
    if (derived.sections) {
        out.section = sectionName(*derived.sections, p);
    }
    return out;
}

units::Length riseOf(const ChartContent& content) {
    if (content.derived.today) {
        return content.derived.today->rise;
    }
    if (content.planned) {
        return content.planned->plan.day.levelChange;
    }
    return content.water ? content.water->plan.day.levelChange : units::Length();
}

} // namespace chart

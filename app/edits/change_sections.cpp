// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/edits/change_sections.h"

#include "app/edits/change_water.h"
#include "core/water/check_section_change.h"

namespace edits {

using sections::SectionChange;

namespace {

/// A hand draws more points than a border needs.
constexpr double sameLine_m = 1.0;

base::Result<void> add(open_water::OpenWater& open, const QString& name, SectionChange::Kind kind,
                       const geo::Path& places, const geo::Path& line) {
    const auto frame = open.water()->frame;
    if (!frame) {
        return base::fail(base::ErrorKind::wrongUse, "there are no sections yet", "",
                          "bring in a log of soundings first");
    }
    const geo::Path drawn = geo::simplified(line, sameLine_m);
    const SectionChange made{kind, frame->toEarth(std::span(places)),
                             frame->toEarth(std::span(drawn))};
    if (auto fits = water::checkSectionChange(*open.water(), open.derived(), made); !fits) {
        return fits;
    }
    change(open, name, {water::Part::sections},
           [&](water::Water& water) { water.sectionChanges.push_back(made); });
    return {};
}

} // namespace

base::Result<void> joinSections(open_water::OpenWater& open, geo::WaterPoint a, geo::WaterPoint b) {
    return add(open, QObject::tr("Join sections"), SectionChange::Kind::join, {a, b}, {});
}

base::Result<void> splitSection(open_water::OpenWater& open, const geo::Path& line) {
    return add(open, QObject::tr("Split section"), SectionChange::Kind::split, {}, line);
}

base::Result<void> moveBorder(open_water::OpenWater& open, geo::WaterPoint a, geo::WaterPoint b,
                              const geo::Path& line) {
    return add(open, QObject::tr("Move border"), SectionChange::Kind::border, {a, b}, line);
}

void takeBackSectionChange(open_water::OpenWater& open) {
    change(open, QObject::tr("Take back change of sections"), {water::Part::sections},
           [](water::Water& water) {
               if (!water.sectionChanges.empty()) {
                   water.sectionChanges.pop_back();
               }
           });
}

void takeBackSectionChanges(open_water::OpenWater& open) {
    change(open, QObject::tr("Take back all changes of sections"), {water::Part::sections},
           [](water::Water& water) { water.sectionChanges.clear(); });
}

} // namespace edits

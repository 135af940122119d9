// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/acts/sections.h"

#include "core/base/number_text.h"
#include "core/water/steps/check_section_change.h"

#include <algorithm>

namespace acts {

using base::Result;
using sections::SectionChange;
using water::Derived;
using water::Water;

namespace {

/// A hand draws more points than a border needs.
constexpr double sameLine_m = 1.0;

bool isOnMap(const sections::SectionMap& map, int number) {
    return std::ranges::find(map.sections, number, &sections::Section::number) !=
           map.sections.end();
}

Result<Water> add(const Water& water, const Derived& derived, SectionChange::Kind kind,
                  const geo::Path& places, const geo::Path& line) {
    if (!water.frame) {
        return base::fail(base::ErrorKind::wrongUse, "there are no sections yet", "",
                          "bring in a log of soundings first");
    }
    const geo::Path drawn = geo::simplified(line, sameLine_m);
    SectionChange made{kind, water.frame->toEarth(std::span(places)),
                       water.frame->toEarth(std::span(drawn))};
    if (auto fits = water::checkSectionChange(water, derived, made); !fits) {
        return std::unexpected(fits.error());
    }
    Water after = water;
    after.sectionChanges.push_back(std::move(made));
    return after;
}

} // namespace

Result<Water> nameSection(const Water& water, const Derived& derived,
                          sections::SectionNumber section, const std::string& name) {
    if (!water.frame || !derived.sections || section < 0 ||
        static_cast<std::size_t>(section) >= derived.sections->sections.size()) {
        return base::fail(base::ErrorKind::wrongUse, "there is no such section", "sections",
                          "draw the water, then choose one of its sections");
    }
    const sections::SectionMap& map = *derived.sections;
    const sections::Section& named = map.sections[static_cast<std::size_t>(section)];
    Water after = water;
    std::erase_if(after.sectionNames, [&](const sections::SectionName& known) {
        return known.number == named.number ||
               (!isOnMap(map, known.number) &&
                sections::sectionAt(map, water.frame->toWater(known.seed)) == section);
    });
    const std::string_view plain = base::trimmed(name);
    if (!plain.empty()) {
        after.sectionNames.push_back(
            {water.frame->toEarth(named.middle), std::string(plain), named.number});
    }
    return after;
}

Result<Water> joinSections(const Water& water, const Derived& derived, geo::WaterPoint a,
                           geo::WaterPoint b) {
    return add(water, derived, SectionChange::Kind::join, {a, b}, {});
}

Result<Water> splitSection(const Water& water, const Derived& derived, const geo::Path& line) {
    return add(water, derived, SectionChange::Kind::split, {}, line);
}

Result<Water> moveBorder(const Water& water, const Derived& derived, geo::WaterPoint a,
                         geo::WaterPoint b, const geo::Path& line) {
    return add(water, derived, SectionChange::Kind::border, {a, b}, line);
}

Result<Water> takeBackSectionChange(const Water& water) {
    Water after = water;
    if (!after.sectionChanges.empty()) {
        after.sectionChanges.pop_back();
    }
    return after;
}

Result<Water> takeBackSectionChanges(const Water& water) {
    Water after = water;
    after.sectionChanges.clear();
    return after;
}

} // namespace acts

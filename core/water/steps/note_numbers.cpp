// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/steps/note_numbers.h"

#include "core/sections/number_sections.h"
#include "core/water/document/chosen_scale.h"

#include <algorithm>

namespace water {

namespace {

bool isNamedAlike(const sections::SectionMap& a, const sections::SectionMap& b) {
    return std::ranges::equal(a.sections, b.sections,
                              [](const sections::Section& x, const sections::Section& y) {
                                  return x.number == y.number && x.name == y.name;
                              });
}

} // namespace

bool noteNumbers(Water& water, Derived& derived) {
    if (!derived.sections || !water.frame) {
        return false;
    }
    sections::SectionMap map = *derived.sections;
    sections::numberSections(map, water.numbering, water.sectionNames, *water.frame);
    sections::Numbering after =
        sections::numberingAfter(map, water.numbering, sectionAreaOf(water, derived), *water.frame);
    if (!isNamedAlike(map, *derived.sections)) {
        derived.sections = std::make_shared<const sections::SectionMap>(std::move(map));
    }
    if (water.numbering == after) {
        return false;
    }
    water.numbering = std::move(after);
    return true;
}

} // namespace water

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/steps/sections_of.h"

#include "core/sections/divide_water.h"
#include "core/sections/reshape_sections.h"
#include "core/sections/section_card.h"
#include "core/water/steps/closed_cells.h"

namespace water {

namespace {

grid::Grid<std::uint8_t> trustNumbers(const surface::TrustGrid& trust) {
    grid::Grid<std::uint8_t> numbers(trust.frame(), 0);
    for (std::size_t i = 0; i < numbers.size(); ++i) {
        numbers[i] = static_cast<std::uint8_t>(trust.names()[i]);
    }
    return numbers;
}

/// The sections as the user wants them otherwise; what cannot be made is told and the rest stands.
sections::SectionMap changed(const sections::SectionMap& divided, const Water& water,
                             const sections::DivideInput& input, units::Area least) {
    grid::PieceGrid pieces = divided.sectionOfCell;
    std::size_t count = divided.sections.size();
    auto refused =
        sections::reshapeSections(pieces, count, water.sectionChanges, input.frame, least);
    sections::SectionMap map = sections::sectionsFrom(pieces, count, input);
    for (const sections::Section& section : divided.sections) {
        map.partsBefore.push_back(section.pieces);
    }
    map.report = divided.report;
    map.refused = std::move(refused);
    return map;
}

} // namespace

base::Result<sections::SectionMap> sectionsOf(const Water& water, const Derived& derived,
                                              const std::optional<geo::WaterPoint>& launch,
                                              base::Progress& progress) {
    const auto closed = closedCells(water, derived.drawn->mask.frame());
    if (!closed) {
        return std::unexpected(closed.error());
    }
    const auto names = trustNumbers(derived.drawn->trust);
    const sections::DivideInput input{.depth = derived.drawn->depth,
                                      .mask = derived.drawn->mask,
                                      .outline = *derived.outline,
                                      .frame = *water.frame,
                                      .bands = derived.bands,
                                      .closed = &*closed,
                                      .trustNames = &names,
                                      .structure = derived.structure.get(),
                                      .weed = derived.weed.get(),
                                      .launch = launch,
                                      .names = water.sectionNames,
                                      .numbering = water.numbering};
    sections::SectionSettings settings;
    settings.wantedArea = derived.sectionArea;
    auto map = sections::divideWater(input, settings, progress);
    if (!map || water.sectionChanges.empty()) {
        return map;
    }
    return changed(*map, water, input, settings.leastArea());
}

} // namespace water

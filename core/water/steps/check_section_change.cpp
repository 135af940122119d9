// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/steps/check_section_change.h"

#include "core/sections/reshape_sections.h"
#include "core/sections/section_settings.h"
#include "core/water/document/chosen_scale.h"
#include "core/water/steps/derive.h"

namespace water {

base::Result<void> checkSectionChange(const Water& water, const Derived& derived,
                                      const sections::SectionChange& change) {
    if (!water.frame || !derived.isCurrent(Step::sections, stampOf(water, Step::sections))) {
        return base::fail(base::ErrorKind::wrongUse, "the sections are just being worked out", "",
                          "try once more when that is done");
    }
    grid::PieceGrid pieces = derived.sections->sectionOfCell;
    std::size_t count = derived.sections->sections.size();
    sections::SectionSettings settings;
    settings.wantedArea = sectionAreaOf(water, derived);
    auto refused = sections::reshapeSections(pieces, count, std::span(&change, 1), *water.frame,
                                             settings.leastArea());
    if (!refused.empty()) {
        return std::unexpected(std::move(refused.front().why));
    }
    return {};
}

} // namespace water

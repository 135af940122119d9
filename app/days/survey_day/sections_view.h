// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/days/survey_day/view_input.h"
#include "core/water/questions/section_ground.h"
#include "core/water/questions/section_use.h"

#include <QString>
#include <QStringList>

#include <utility>
#include <vector>

namespace days::survey_day {

/// One line of a section's card: what it is about, and what there is to say.
using SectionFact = std::pair<QString, QString>;

/// The step "Sections".
struct SectionsView {
    QString state;
    QString wanted;                ///< Size of a section.
    std::vector<QStringList> rows; ///< Name, area, mean depth, weed, what was fished in it.
    std::vector<std::vector<SectionFact>> cards; ///< All that is known of each section.
    std::vector<QString> proposals; ///< A name for each section; empty where there is none.
    QString coverage; ///< How much of the water was ever fished; empty without sections.
};

/// What going through the whole log and every cell tells of the sections: nothing for a moment at
/// the desk.
struct SectionsCounted {
    std::vector<water::SectionUse> uses;
    std::vector<std::vector<water::KindShare>> grounds;
};
[[nodiscard]] SectionsCounted countSections(const water::Water& water,
                                            const water::Derived& derived);

/// \param count of this map; where it is none, what it tells is left blank.
[[nodiscard]] SectionsView sectionsViewOf(const ViewInput& input, const SectionsCounted& count);

/// What the user changed about the division.
struct SectionChangesView {
    QString words; ///< How many changes there are, and which cannot be made any more.
    bool hasAny = false;
    bool canSplit = false;
    bool canJoin = false;
};

[[nodiscard]] SectionChangesView sectionChangesViewOf(const ViewInput& input);

} // namespace days::survey_day

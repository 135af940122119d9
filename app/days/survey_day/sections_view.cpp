// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/survey_day/sections_view.h"

namespace days::survey_day {

namespace {

using wording::Words;

QString detailOf(const sections::Section& section, const Words& words, bool hasLaunch) {
    QStringList parts{QStringLiteral("%1 of bank").arg(words.length(section.shore)),
                      QStringLiteral("%1 of drop-off").arg(words.length(section.dropOff)),
                      QStringLiteral("%1 sounded, %2 inferred, %3 a guess")
                          .arg(Words::share(section.trustShare[0]),
                               Words::share(section.trustShare[1]),
                               Words::share(section.trustShare[2]))};
    if (hasLaunch) {
        parts.push_back(QStringLiteral("%1 from the launch").arg(words.length(section.fromLaunch)));
    }
    return parts.join(QStringLiteral(" · "));
}

} // namespace

SectionsView sectionsViewOf(const ViewInput& input) {
    SectionsView view;
    view.wanted = input.words.area(input.water.settings.sectionArea);
    const auto& map = input.derived.sections;
    if (!map) {
        view.state = QStringLiteral("not divided yet");
        return view;
    }
    const std::size_t count = map->sections.size();
    view.state =
        QStringLiteral("%1 %2 of about %3")
            .arg(count)
            .arg(count == 1 ? QStringLiteral("section") : QStringLiteral("sections"), view.wanted);
    for (const sections::Section& section : map->sections) {
        view.rows.push_back({QString::fromStdString(section.name), input.words.area(section.area),
                             input.words.depth(section.meanDepth),
                             input.words.depth(section.maxDepth), Words::share(section.weedShare),
                             Words::share(section.trustShare[2])});
        view.details.push_back(detailOf(section, input.words, input.water.plan.launch.has_value()));
    }
    return view;
}

} // namespace days::survey_day

// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/survey_day/sections_view.h"

#include "app/wording/counted_words.h"
#include "app/wording/section_words.h"
#include "app/wording/tongue.h"
#include "app/wording/zone_words.h"
#include "core/water/document/chosen_scale.h"
#include "core/water/questions/propose_section_names.h"
#include "core/water/questions/section_ground.h"
#include "core/water/questions/section_use.h"

#include <algorithm>
#include <cmath>

namespace days::survey_day {

namespace {

using wording::Words;

const QString between = QStringLiteral(" · ");
constexpr int structureGoes = 3; ///< After area, depth and bands.

/// Parts in a row, broken between them and never inside one.
QString inARow(const QStringList& parts) {
    QStringList whole;
    for (QString part : parts) {
        whole.push_back(part.replace(' ', QChar::Nbsp));
    }
    return whole.join(between);
}

QString shareOf(const QString& what, double share) {
    return QStringLiteral("%1 %2").arg(what, Words::share(share));
}

QString bandLine(const sections::Section& section, const contours::Bands& bands,
                 const Words& words) {
    QStringList parts;
    for (std::size_t k = 0; k < section.bandShare.size() && k < bands.count(); ++k) {
        if (section.bandShare[k] >= 0.005) {
            parts.push_back(
                shareOf(words.depthRange(bands.from(k), bands.to(k)), section.bandShare[k]));
        }
    }
    return inARow(parts);
}

QString structureLine(const std::vector<water::KindShare>& ground) {
    QStringList parts;
    for (const water::KindShare& part : ground) {
        if (part.share >= 0.005) {
            parts.push_back(shareOf(wording::spoken(part.kind), part.share));
        }
    }
    return parts.isEmpty() ? wording::Tongue::tr("none stands out") : inARow(parts);
}

QString trustLine(const sections::Section& section) {
    return inARow({shareOf(wording::Tongue::tr("sounded"), section.trustShare[0]),
                   shareOf(wording::Tongue::tr("inferred"), section.trustShare[1]),
                   shareOf(wording::Tongue::tr("a guess"), section.trustShare[2])});
}

QString fishedLine(const water::SectionUse& use) {
    if (use.stays == 0) {
        return use.fishedShare < 0.005
                   ? wording::Tongue::tr("Never fished")
                   : wording::Tongue::tr("Never anchored in; %1 within a cast of a stay beside it")
                         .arg(Words::share(use.fishedShare));
    }
    const QString unknown =
        use.effortUnknown == 0
            ? QString()
            : wording::Tongue::tr(", the rods of %1 not known").arg(use.effortUnknown);
    return wording::Tongue::tr(
               "%1 in %2 rod-hours (%3%6, %4 without a fish); %5 of it within a cast")
        .arg(wording::fishCounted(std::lround(use.tally.fish)),
             wording::Tongue::number(use.tally.rodHours, 0), wording::staysCounted(use.stays),
             Words::count(static_cast<std::size_t>(use.blanks)), Words::share(use.fishedShare),
             unknown);
}

QString windLine(const water::SectionUse& use, const logbook::Wind& wind, const Words& words) {
    if (!use.waves) {
        return wording::Tongue::tr("%1 under Tomorrow: what it raises here is not known")
            .arg(words.wind(wind));
    }
    if (*wind.speed <= units::Speed()) {
        return wording::Tongue::tr("calm");
    }
    return wording::Tongue::tr("%1: %2 of open water upwind, waves about %3")
        .arg(words.wind(wind), words.length(*use.fetch),
             words.fineDepth(units::Depth::fromLength(*use.waves)));
}

QString fishedCell(const water::SectionUse& use) {
    return use.stays == 0 ? wording::Tongue::tr("never")
                          : wording::Tongue::tr("%1 in %2 h")
                                .arg(std::lround(use.tally.fish))
                                .arg(wording::Tongue::number(use.tally.rodHours, 0));
}

std::vector<SectionFact> cardOf(const sections::Section& section, const ViewInput& input) {
    const Words& words = input.words;
    std::vector<SectionFact> card{
        {wording::Tongue::tr("Area"), words.areaInBoth(section.area)},
        {wording::Tongue::tr("Depth"),
         wording::Tongue::tr("%1 on average, down to %2")
             .arg(words.depth(section.meanDepth), words.depth(section.maxDepth))},
        {wording::Tongue::tr("Bands"),
         bandLine(section, water::bandsOf(input.water, input.derived), words)},
        {wording::Tongue::tr("Drop-off"),
         wording::Tongue::tr("%1 of edge").arg(words.length(section.dropOff))},
        {wording::Tongue::tr("Weed"),
         wording::Tongue::tr("likely on %1").arg(Words::share(section.weedShare))},
        {wording::Tongue::tr("Bank"), words.length(section.shore)}};
    if (input.water.plan.launch) {
        card.emplace_back(
            wording::Tongue::tr("Launch"),
            wording::Tongue::tr("%1 away over water").arg(words.length(section.fromLaunch)));
    }
    card.emplace_back(wording::Tongue::tr("Trust"), trustLine(section));
    return card;
}

QString coverageOf(const sections::SectionMap& map, const std::vector<water::SectionUse>& uses) {
    double whole_m2 = 0.0;
    double fished_m2 = 0.0;
    for (std::size_t i = 0; i < uses.size(); ++i) {
        const double area_m2 = map.sections[i].area.inSquareMetres();
        whole_m2 += area_m2;
        fished_m2 += uses[i].fishedShare * area_m2;
    }
    const auto never = static_cast<std::size_t>(
        std::ranges::count_if(uses, [](const water::SectionUse& use) { return use.stays == 0; }));
    return wording::Tongue::tr(
               "%1 of %2 never fished; %3 of the water lies within a cast of a stay.")
        .arg(Words::count(never), wording::sectionsCounted(static_cast<qint64>(uses.size())),
             Words::share(whole_m2 > 0.0 ? fished_m2 / whole_m2 : 0.0));
}

/// Names that sections could have and do not; none that another has.
std::vector<QString> proposalsOf(const ViewInput& input, const sections::SectionMap& map) {
    std::vector<QString> names(map.sections.size());
    const auto proposals = water::proposeSectionNames(input.water, input.derived);
    for (std::size_t i = 0; i < proposals.size(); ++i) {
        const QString name = proposals[i] ? wording::sectionName(*proposals[i]) : QString();
        const bool isTaken = std::ranges::any_of(map.sections, [&](const auto& section) {
            return QString::fromStdString(section.name) == name;
        });
        names[i] = isTaken ? QString() : name;
    }
    return names;
}

} // namespace

SectionsCounted countSections(const water::Water& water, const water::Derived& derived) {
    return {water::useOfSections(water, derived), water::groundOfSections(derived)};
}

SectionsView sectionsViewOf(const ViewInput& input, const SectionsCounted& count) {
    SectionsView view;
    view.wanted = input.words.area(water::sectionAreaOf(input.water, input.derived));
    const auto& map = input.derived.sections;
    if (!map) {
        view.state = wording::Tongue::tr("not divided yet");
        return view;
    }
    view.state =
        wording::Tongue::tr("%1 of about %2")
            .arg(wording::sectionsCounted(static_cast<qint64>(map->sections.size())), view.wanted);
    view.proposals = proposalsOf(input, *map);
    const auto& [uses, grounds] = count;
    const bool hasUses = uses.size() == map->sections.size();
    for (std::size_t i = 0; i < map->sections.size(); ++i) {
        const sections::Section& section = map->sections[i];
        view.rows.push_back({wording::nameCalled(section.name), input.words.area(section.area),
                             input.words.depth(section.meanDepth), Words::share(section.weedShare),
                             hasUses ? fishedCell(uses[i]) : QString()});
        std::vector<SectionFact> card = cardOf(section, input);
        if (grounds.size() == map->sections.size()) {
            card.emplace(card.begin() + structureGoes, wording::Tongue::tr("Structure"),
                         structureLine(grounds[i]));
        }
        if (hasUses) {
            card.emplace_back(wording::Tongue::tr("Fished"), fishedLine(uses[i]));
            card.emplace_back(wording::Tongue::tr("Tomorrow"),
                              windLine(uses[i], input.water.plan.day.wind, input.words));
        }
        view.cards.push_back(std::move(card));
    }
    view.coverage = hasUses ? coverageOf(*map, uses) : QString();
    return view;
}

SectionChangesView sectionChangesViewOf(const ViewInput& input) {
    SectionChangesView view;
    const auto& map = input.derived.sections;
    const std::size_t count = input.water.sectionChanges.size();
    view.hasAny = count > 0;
    view.canSplit = map != nullptr && !map->sections.empty();
    view.canJoin = map != nullptr && map->sections.size() > 1;
    if (!view.hasAny) {
        return view;
    }
    QStringList lines{wording::Tongue::counted(
        "%n changes by hand; they are made again whenever the water is drawn.",
        "%n change by hand; it is made again whenever the water is drawn.", count)};
    if (map) {
        for (const sections::ChangeRefused& refused : map->refused) {
            lines.push_back(wording::Tongue::tr("Change %1 does not fit this map: %2.")
                                .arg(refused.change + 1)
                                .arg(wording::Tongue::ofCore(refused.why.what)));
        }
    }
    view.words = lines.join('\n');
    return view;
}

} // namespace days::survey_day

// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/tomorrow/tomorrow_view.h"

#include "app/wording/belief_words.h"
#include "app/wording/counted_words.h"
#include "app/wording/lie_words.h"
#include "app/wording/planned_words.h"
#include "app/wording/reasons.h"
#include "app/wording/spoken_names.h"
#include "app/wording/tongue.h"
#include "app/wording/zone_words.h"
#include "core/light/clock_and_sun.h"
#include "core/marks/beliefs.h"
#include "core/marks/factor_values.h"
#include "core/marks/overnight.h"
#include "core/wind/beaufort.h"

#include <algorithm>
#include <cmath>

namespace days::tomorrow {

using marks::FactorKind;
using wording::Words;

namespace {

QString fromView(std::string_view text) {
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

QString capitalised(const QString& words) {
    return words.left(1).toUpper() + words.mid(1);
}

QString clockTime(const std::optional<units::Moment>& moment, const units::Clock& clock) {
    return moment ? QString::fromStdString(units::timeOfDayText(*moment, clock))
                  : wording::Tongue::tr("none");
}

const marks::Mark* markRanked(const water::PlannedDay& day, int rank) {
    const auto found = std::ranges::find(day.marks, rank, &marks::Mark::rank);
    return found == day.marks.end() ? nullptr : &*found;
}

} // namespace

QString timeOfDay(std::chrono::seconds sinceMidnight) {
    return Words::timeOfDay(sinceMidnight);
}

QString conditionsLine(const marks::ExpectedDay& day, const Words& words) {
    // The wind first: a line that is too long ends in dots.
    return wording::Tongue::tr("%1, %2, %3 to %4")
        .arg(wording::windsOf(day, words), Words::day(day.day), timeOfDay(day.start),
             timeOfDay(day.end) +
                 (marks::isOvernight(day) ? wording::Tongue::tr(" the next day") : QString()));
}

QString clockQuestion(const water::Water& water) {
    if (!water.frame) {
        return {};
    }
    const auto noon = water.clock.at(water.plan.day.day, std::chrono::hours(12));
    const auto ahead = light::clockAheadOfSun(water.clock, water.frame->centre(), noon);
    if (std::chrono::abs(ahead) <= light::suspectClock) {
        return {};
    }
    const double hours = std::chrono::duration<double, std::ratio<3600>>(ahead).count();
    return (hours > 0.0
                ? wording::Tongue::tr("The sun over this water is %1 h behind this clock. Is "
                                      "%2 its time zone?")
                : wording::Tongue::tr("The sun over this water is %1 h ahead of this clock. "
                                      "Is %2 its time zone?"))
        .arg(wording::Tongue::number(std::fabs(hours), 1),
             QString::fromStdString(water.clock.zone()));
}

QString beaufortWords(units::Speed wind) {
    const int force = wind::beaufortForce(wind);
    return wording::Tongue::tr("Force %1, %2: %3")
        .arg(force)
        .arg(wording::Tongue::ofCore(std::string(wind::beaufortName(force))),
             wording::Tongue::ofCore(std::string(wind::beaufortOnTheWater(force))));
}

int rodsAllowed(const marks::Tackle& tackle, const logbook::HouseRules& rules) {
    return rules.rodLimit ? std::min(tackle.rods, *rules.rodLimit) : tackle.rods;
}

QString tackleLine(const marks::Tackle& tackle, const logbook::HouseRules& rules,
                   const Words& words) {
    const int rods = rodsAllowed(tackle, rules);
    return (tackle.toOneAnchor ? wording::Tongue::tr("%1, one anchor, scope %2, cast %3")
                               : wording::Tongue::tr("%1, scope %2, cast %3"))
        .arg(wording::rodsCounted(rods), wording::Tongue::shortNumber(tackle.scope, 2),
             words.length(tackle.cast));
}

QString rodLimitWords(const marks::Tackle& tackle, const logbook::HouseRules& rules) {
    if (!rules.rodLimit) {
        return {};
    }
    QString text = wording::Tongue::tr("House rules: at most %1 rods a boat.").arg(*rules.rodLimit);
    if (tackle.rods > *rules.rodLimit) {
        text +=
            wording::Tongue::tr(" Planned with %1, not %2.").arg(*rules.rodLimit).arg(tackle.rods);
    }
    return text;
}

QString factorTitle(FactorKind kind) {
    switch (kind) {
    case FactorKind::depth:
        return wording::Tongue::tr("depth in your bands");
    case FactorKind::dropOff:
        return wording::Tongue::tr("drop-off in reach");
    case FactorKind::weedEdge:
        return wording::Tongue::tr("weed edge in reach");
    case FactorKind::feature:
        return wording::Tongue::tr("humps and holes");
    case FactorKind::windward:
        return wording::Tongue::tr("wind blows on to it");
    case FactorKind::shelter:
        return wording::Tongue::tr("waves");
    case FactorKind::record:
        return wording::Tongue::tr("catches here");
    case FactorKind::lessTried:
        return wording::Tongue::tr("seldom fished");
    case FactorKind::trust:
        return wording::Tongue::tr("depth well known");
    case FactorKind::bottom:
        return wording::Tongue::tr("kind of bottom");
    case FactorKind::hour:
        return wording::Tongue::tr("hours of the day");
    case FactorKind::bestOfMany:
        return wording::Tongue::tr("best of many");
    }
    return {};
}

QString factorMeaning(FactorKind kind) {
    switch (kind) {
    case FactorKind::depth:
        return wording::Tongue::tr(
            "How much of the water within a cast has a depth you want to fish.");
    case FactorKind::dropOff:
        return wording::Tongue::tr("How much edge of a drop-off lies within a cast.");
    case FactorKind::weedEdge:
        return wording::Tongue::tr("How much edge of weed lies within a cast.");
    case FactorKind::feature:
        return wording::Tongue::tr("%1 within a cast.")
            .arg(capitalised(wording::allOf(structure::KindFamily::feature)));
    case FactorKind::windward:
        return wording::Tongue::tr(
            "Rippled water goes before calm, the more the farther right; against "
            "the liking for calm it says which waves you like best.");
    case FactorKind::shelter:
        return wording::Tongue::tr(
            "Calm water goes before rippled, the more the farther right; against "
            "the liking for ripple it says which waves you like best.");
    case FactorKind::record:
        return wording::Tongue::tr("What your log says of the place: fish and blanks alike.");
    case FactorKind::lessTried:
        return wording::Tongue::tr("Places of which the log knows little, so that you learn more.");
    case FactorKind::trust:
        return wording::Tongue::tr("Places where the depth is sounded rather than guessed.");
    case FactorKind::bottom:
        return wording::Tongue::tr("What your log says of the kind of bottom.");
    case FactorKind::hour:
        return wording::Tongue::tr("What your log says of the hours planned.");
    case FactorKind::bestOfMany:
        return wording::Tongue::tr("What looks best of many places looks better than it is.");
    }
    return {};
}

QString beliefRow(const marks::BeliefRecord& record, bool hasLog) {
    return capitalised(factorTitle(record.kind)) + QStringLiteral(". ") +
           wording::said(record, hasLog);
}

QString weightTitle(FactorKind kind) {
    switch (kind) {
    case FactorKind::windward:
        return wording::Tongue::tr("liking for ripple");
    case FactorKind::shelter:
        return wording::Tongue::tr("liking for calm");
    default:
        return factorTitle(kind);
    }
}

QString likedWavesWords(const marks::Weights& weights, const Words& words) {
    const marks::WaveLiking liking = marks::waveLikingOf(weights);
    if (!(liking.weight > 0.0)) {
        return wording::Tongue::tr("Waves do not count for you, while they are not too rough.");
    }
    return liking.ripple > 0.0 ? wording::Tongue::tr("You like waves of about %1 best.")
                                     .arg(words.lengthTo(marks::bestWaves(liking.ripple), 2))
                               : wording::Tongue::tr("You like it as calm as can be.");
}

QString weightsLine(const marks::Weights& weights) {
    std::vector<FactorKind> kinds(marks::allFactorKinds.begin(), marks::allFactorKinds.end());
    std::ranges::stable_sort(kinds, std::greater{},
                             [&](FactorKind kind) { return weights.of(kind); });
    QStringList names;
    for (const FactorKind kind : kinds) {
        if (weights.of(kind) > 0.0 && names.size() < 3) {
            names +=
                wording::Tongue::ofCore(fromView(marks::nameOf(kind))
                                            .replace('_', kind == FactorKind::dropOff ? '-' : ' ')
                                            .toStdString());
        }
    }
    return names.isEmpty() ? wording::Tongue::tr("nothing: all marks are equal")
                           : names.join(QStringLiteral(", "));
}

QString markTitle(const marks::Mark& mark, const Words& words) {
    const QString called = wording::calledBy(mark, words);
    return called.isEmpty() ? wording::Tongue::tr("Mark %1").arg(mark.rank) : called;
}

std::vector<QStringList> markRows(const water::PlannedDay& day, const Words& words) {
    std::vector<QStringList> rows;
    for (const marks::Mark& mark : day.marks) {
        rows.push_back(
            {QStringLiteral("%1  %2%3")
                 .arg(mark.rank)
                 .arg(markTitle(mark, words),
                      (mark.isPinned ? wording::Tongue::tr(", own") : QString()) +
                          (mark.toLearn ? wording::Tongue::tr(", to learn") : QString())),
             words.depth(mark.depth) + ' ' + words.plusMinus(mark.trust), scoreWords(mark)});
    }
    return rows;
}

bool isWorthTelling(const marks::Factor& factor) {
    constexpr double least = 0.05;
    return std::fabs(factor.times - 1.0) >= least;
}

QString scoreWords(const marks::Mark& mark) {
    const QString times = QStringLiteral("×") + wording::Tongue::number(mark.score, 2);
    return mark.expected ? QStringLiteral("%1  %2").arg(
                               wording::Tongue::number(mark.expected->per10RodHours, 1), times)
                         : times;
}

QString expectedWords(const marks::Mark& mark) {
    if (!mark.expected) {
        return wording::Tongue::tr(
                   "%1 times what the water gives on average, by your beliefs alone.")
            .arg(wording::Tongue::number(mark.score, 2));
    }
    const QString words =
        wording::Tongue::tr(
            "%1 fish in 10 rod-hours to be expected, between %2 and %3 (80 %); %4 times "
            "the water's mean.")
            .arg(wording::Tongue::number(mark.expected->per10RodHours, 1))
            .arg(wording::Tongue::number(mark.expected->low, 1))
            .arg(wording::Tongue::number(mark.expected->high, 1))
            .arg(wording::Tongue::number(mark.score, 2));
    return mark.toLearn ? words + wording::Tongue::tr(" On the list in order to learn.") : words;
}

std::vector<marks::Factor> weighty(const marks::Mark& mark) {
    std::vector<marks::Factor> found;
    std::ranges::copy_if(mark.factors, std::back_inserter(found), isWorthTelling);
    // Half as much counts like twice as much.
    std::ranges::stable_sort(found, std::ranges::greater(), [](const marks::Factor& factor) {
        return std::abs(std::log(std::max(factor.times, 1e-6)));
    });
    return found;
}

QStringList furtherReasons(const marks::Mark& mark, const Words& words) {
    QStringList lines;
    for (const marks::Factor& factor : mark.factors) {
        if (factor.weight > 0.0 && !isWorthTelling(factor)) {
            lines += wording::said(factor.because, words);
        }
    }
    lines.removeAll(QString());
    return lines;
}

std::vector<QStringList> anchorRows(const marks::Mark& mark,
                                    const std::optional<geo::WaterFrame>& frame,
                                    const Words& words) {
    std::vector<QStringList> rows;
    const auto add = [&](QString name, const anchoring::Anchor& anchor) {
        if (anchor.isByHand) {
            name += wording::Tongue::tr(", by hand");
        }
        rows.push_back(
            {frame ? QStringLiteral("%1  %2").arg(name, Words::place(frame->toEarth(anchor.place)))
                   : name,
             words.depth(anchor.depth), words.length(anchor.rope)});
    };
    add(wording::Tongue::tr("bow"), mark.anchors.bow);
    if (mark.anchors.stern) {
        add(wording::Tongue::tr("stern"), *mark.anchors.stern);
    }
    return rows;
}

QString ropesLine(const marks::Mark& mark, const Words& words) {
    const QString bow = words.length(mark.anchors.bow.rope);
    const QString ropes =
        mark.anchors.stern ? wording::Tongue::tr("mark %1: bow %2, stern %3")
                                 .arg(mark.rank)
                                 .arg(bow, words.length(mark.anchors.stern->rope))
                           : wording::Tongue::tr("mark %1: one anchor, %2").arg(mark.rank).arg(bow);
    return mark.isLaidByHand() ? ropes + wording::Tongue::tr(", laid by hand") : ropes;
}

QString lieWords(const marks::Mark& mark, const Words& words) {
    if (!mark.anchors.stern) {
        return wording::Tongue::tr("Bow to %1. Drop the bow anchor and fall back on %2 of rope. %3 "
                                   "Ropes are worked out from depth plus bow height.")
            .arg(Words::bearing(mark.anchors.lie.heading), words.length(mark.anchors.bow.rope),
                 wording::swingOf(mark, words));
    }
    return wording::Tongue::tr(
               "Bow to %1. Drop the bow anchor, fall back on %2 of rope, lower the "
               "stern anchor, haul in to %3. Ropes are worked out from depth plus bow height.")
        .arg(Words::bearing(mark.anchors.lie.heading), words.length(mark.anchors.fallBackRope),
             words.length(mark.anchors.bow.rope));
}

std::vector<QStringList> rodRows(const marks::Mark& mark, const Words& words) {
    std::vector<QStringList> rows;
    for (const rods::RodPlace& rod : mark.spread.rods) {
        QString name = QString::number(rows.size() + 1);
        if (rod.over) {
            name += QStringLiteral("  ") + wording::spoken(*rod.over);
        }
        if (rod.isByHand) {
            name += wording::Tongue::tr(", by hand");
        }
        rows.push_back({name, Words::bearing(rod.bearing), words.length(rod.distance),
                        words.depth(rod.depth), words.depth(rod.stopKnot)});
    }
    return rows;
}

std::vector<QStringList> dayRows(const water::PlannedDay& day, const units::Clock& clock,
                                 const Words& words) {
    std::vector<QStringList> rows;
    for (const marks::DayStop& stop : day.day.stops) {
        const marks::Mark* mark = markRanked(day, stop.rank);
        rows.push_back(
            {QStringLiteral("%1  %2").arg(stop.rank).arg(mark ? markTitle(*mark, words)
                                                              : QString()),
             clockTime(stop.arrive, clock), clockTime(stop.leave, clock),
             Words::hours(std::chrono::duration<double, std::ratio<3600>>(stop.stay).count()),
             words.length(stop.move)});
    }
    return rows;
}

QString dayLine(const water::PlannedDay& day, const Words& words) {
    const std::size_t count = day.day.stops.size();
    if (count == 0) {
        return wording::Tongue::tr("no stops");
    }
    const double hours = std::chrono::duration<double, std::ratio<3600>>(
                             day.day.stops.back().leave - day.day.stops.front().arrive)
                             .count();
    return QStringLiteral("%1, %2, %3")
        .arg(wording::marksCounted(static_cast<qint64>(count)), Words::hours(hours),
             words.length(day.day.moves));
}

QString lightWords(const light::SunTimes& light, const units::Clock& clock) {
    return wording::Tongue::tr("First light %1, sunrise %2, sunset %3, dark %4.")
        .arg(clockTime(light.civilDawn, clock), clockTime(light.sunrise, clock),
             clockTime(light.sunset, clock), clockTime(light.civilDusk, clock));
}

} // namespace days::tomorrow

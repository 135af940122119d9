// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/wording/doubts.h"

#include "app/wording/by_kind.h"
#include "app/wording/tongue.h"
#include "core/logbook/anglers.h"

namespace wording {

namespace {

QString timesOf(units::Moment start, units::Moment end, const units::Clock& clock) {
    return Tongue::tr("%1 to %2")
        .arg(QString::fromStdString(units::timeOfDayText(start, clock)),
             QString::fromStdString(units::timeOfDayText(end, clock)));
}

} // namespace

QString said(const water::StayDoubt& doubt, const units::Clock& clock, const Words& words) {
    return std::visit(
        ByKind{[](const water::StayInTheFuture&) {
                   return Tongue::tr("This stay has not ended yet.");
               },
               [](const water::StayOverADay& d) {
                   return Tongue::tr("This stay is %1 hours long.").arg(d.hours.count());
               },
               [](const water::StayOutOfSeason&) {
                   return Tongue::tr("The fishery is closed at this time of the year.");
               },
               [](const water::StayOfManyRods& d) {
                   return (d.isRule ? Tongue::tr("%1 rods, where the house allows %2.")
                                    : Tongue::tr("%1 rods, where %2 ride in the boat."))
                       .arg(d.rods)
                       .arg(d.usual);
               },
               [](const water::FishBesideStay& d) {
                   return Tongue::counted("%n fish were taken before or after this stay.",
                                          "One fish was taken before or after this stay.", d.fish);
               },
               [&](const water::StayOffTheWater& d) {
                   return Tongue::tr("This place is not on the water: %1 from its shore.")
                       .arg(words.length(d.distance));
               },
               [](const water::StayInClosedWater& d) {
                   return d.name.empty() ? Tongue::tr("This place lies in closed water.")
                                         : Tongue::tr("This place lies in closed water: %1.")
                                               .arg(QString::fromStdString(d.name));
               },
               [&](const water::StayOverOther& d) {
                   return Tongue::tr("Another stay lasted from %1: one boat cannot be in both.")
                       .arg(timesOf(d.start, d.end, clock));
               }},
        doubt);
}

QString stayTitle(const logbook::Stay& stay, const units::Clock& clock) {
    return QStringLiteral("%1, %2").arg(Words::day(clock.dayOf(stay.start)),
                                        timesOf(stay.start, stay.end, clock));
}

QString saidOfDoubtful(const logbook::Stay& stay, logbook::StayId meets,
                       const water::Water& water) {
    const auto position = logbook::positionOf(water.log, meets);
    const QString title = stayTitle(stay, water.clock);
    if (!position) {
        return Tongue::tr("%1: overlaps another stay brought in with it.").arg(title);
    }
    const logbook::Stay& other = water.log[*position];
    if (!stay.who.empty() && stay.who != other.who &&
        (other.who.empty() || logbook::areOtherAnglers(stay.who, other.who))) {
        return Tongue::tr("%1, by %2: at that place and time the log has a stay by %3, %4. Did "
                          "they fish with rods of their own, or is it one stay?")
            .arg(title, QString::fromStdString(stay.who),
                 other.who.empty() ? Tongue::tr("somebody not named")
                                   : QString::fromStdString(other.who),
                 timesOf(other.start, other.end, water.clock));
    }
    return Tongue::tr("%1: the log has the boat in another stay then, %2. Which one is right?")
        .arg(title, timesOf(other.start, other.end, water.clock));
}

} // namespace wording

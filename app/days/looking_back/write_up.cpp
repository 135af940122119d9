// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/looking_back/write_up.h"

#include "core/logbook/kept_log.h"
#include "core/water/steps/known_stays.h"

#include <algorithm>

namespace days::looking_back {

using logbook::Stay;
using logbook::StayId;

namespace {

QString timesOf(units::Moment from, units::Moment to, const units::Clock& clock) {
    return QStringLiteral("%1–%2").arg(QString::fromStdString(units::timeOfDayText(from, clock)),
                                       QString::fromStdString(units::timeOfDayText(to, clock)));
}

} // namespace

WriteUp::WriteUp(const water::Water& water, const water::PlannedDay& planned,
                 const wording::Words& words)
    : day_(planned.plan.day.day) {
    const std::vector<KnownPlace> places = knownPlaces(water, &planned, words);
    for (const marks::DayStop& stop : planned.day.stops) {
        const auto mark = std::ranges::find(places, std::optional(stop.rank), &KnownPlace::rank);
        if (mark != places.end()) {
            // To the minute, as they are shown: what is ticked is what was seen.
            const auto minute = [](units::Moment moment) -> units::Moment {
                return std::chrono::round<std::chrono::minutes>(moment);
            };
            const units::Moment from = minute(stop.leave - stop.stay);
            stops_.push_back({*mark, from, minute(stop.leave), false, {}});
        }
    }
}

Stay WriteUp::plannedStay(std::size_t stop) const {
    Stay stay;
    stay.place = stops_[stop].mark.place;
    stay.start = stops_[stop].from;
    stay.end = stops_[stop].to;
    return stay;
}

std::optional<StayId> WriteUp::stayOf(std::size_t stop, const water::Water& water) const {
    const StayId written = stops_[stop].written;
    if (written.isGiven() && logbook::positionOf(water.log, written)) {
        return written;
    }
    // Written down at another time, or by a track.
    using Is = water::StayStanding::Is;
    const auto standing = water::KnownStays(water).standingOf(plannedStay(stop));
    return standing.is == Is::known || standing.is == Is::update ? standing.of : std::nullopt;
}

QStringList WriteUp::cells(std::size_t stop, const water::Water& water) const {
    const Stop& its = stops_[stop];
    const auto id = stayOf(stop, water);
    const auto position = id ? logbook::positionOf(water.log, *id) : std::nullopt;
    if (!position) {
        return {its.mark.name, timesOf(its.from, its.to, water.clock),
                its.isStruck ? QStringLiteral("not fished") : QStringLiteral("planned")};
    }
    const Stay& stay = water.log[*position];
    const int fish = stay.fishCount();
    const auto lost = static_cast<int>(stay.runs.size()) - fish;
    QString came = fish == 0 ? QStringLiteral("blank") : QStringLiteral("%1 fish").arg(fish);
    if (lost > 0) {
        came += QStringLiteral(", %1 lost").arg(lost);
    }
    return {its.mark.name, timesOf(stay.start, stay.end, water.clock), came};
}

widgets::RowLook WriteUp::look(std::size_t stop, const water::Water& water) const {
    if (stayOf(stop, water)) {
        return widgets::RowLook::plain;
    }
    return stops_[stop].isStruck ? widgets::RowLook::struck : widgets::RowLook::faint;
}

QString WriteUp::line(const water::Water& water) const {
    std::size_t written = 0;
    for (std::size_t stop = 0; stop < size(); ++stop) {
        written += stayOf(stop, water) ? 1 : 0;
    }
    return QStringLiteral("%1 of %2 stops written down").arg(written).arg(size());
}

} // namespace days::looking_back

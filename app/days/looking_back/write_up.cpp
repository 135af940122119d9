// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/looking_back/write_up.h"

#include "app/wording/tongue.h"
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

WriteUp::WriteUp(const water::BoatSheet& sheet) : day_(sheet.day) {
    for (const water::BoatSheet::Stop& stop : sheet.stops) {
        const QString name = numbered(stop.rank, QString::fromStdString(stop.called));
        stops_.push_back({{name, stop.place, stop.rank}, stop.from, stop.to, false, {}});
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
                its.isStruck ? wording::Tongue::tr("not fished") : wording::Tongue::tr("planned")};
    }
    const Stay& stay = water.log[*position];
    const int fish = stay.fishCount();
    const auto lost = static_cast<int>(stay.runs.size()) - fish;
    QString came =
        fish == 0 ? wording::Tongue::tr("blank") : wording::Tongue::tr("%1 fish").arg(fish);
    if (lost > 0) {
        came += wording::Tongue::tr(", %1 lost").arg(lost);
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
    return wording::Tongue::tr("%1 of %2 stops written down").arg(written).arg(size());
}

} // namespace days::looking_back

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/document/stamp_values.h"

namespace water {

namespace {

/// The stamp of a list's items, worked out once a list. \param slot in the list, for this
/// `takeOne`.
template <class T, class TakeOne>
Stamp ofItems(const base::SharedList<T>& list, std::size_t slot, const TakeOne& takeOne) {
    return Stamp(list.workedOutOnce(slot, [&takeOne](const std::vector<T>& items) {
        Stamp stamp;
        stamp.take(items.size());
        for (const T& item : items) {
            takeOne(stamp, item);
        }
        return stamp.value();
    }));
}

void takeMoment(Stamp& stamp, units::Moment moment) {
    stamp.takeWord(
        std::bit_cast<std::uint64_t>(static_cast<std::int64_t>(moment.time_since_epoch().count())));
}

/// By words: there may be millions of them.
void takePlace(Stamp& stamp, geo::LonLat place) {
    const auto& [lon_deg, lat_deg] = place;
    stamp.takeWord(std::bit_cast<std::uint64_t>(lon_deg));
    stamp.takeWord(std::bit_cast<std::uint64_t>(lat_deg));
}

void takeSounding(Stamp& stamp, const soundings::Sounding& sounding) {
    const auto& [place, shown, time] = sounding;
    takePlace(stamp, place);
    stamp.takeWord(std::bit_cast<std::uint64_t>(shown.inMetres()));
    stamp.takeWord(time.has_value() ? 1 : 0);
    if (time) {
        takeMoment(stamp, *time);
    }
}

void takeFish(Stamp& stamp, const logbook::Fish& fish) {
    const auto& [id, time, landed, species, bait, weight, length, baitDepth, note, who, hooked,
                 returned, baitPlace, photograph, others] = fish;
    leaveOut(id, species, bait, weight, length, baitDepth, note, who, hooked, returned, baitPlace,
             photograph, others);
    stamp.takeWord(time.has_value() ? 1 : 0);
    if (time) {
        takeMoment(stamp, *time);
    }
    stamp.takeWord(landed ? 1 : 0);
}

void takeStay(Stamp& stamp, const logbook::Stay& stay) {
    const auto& [id, start, end, place, rods, bait, conditions, note, runs, who, baitPlace,
                 photograph, others] = stay;
    const auto& [windFrom, windSpeed, waterTemperature, level, sky] = conditions;
    leaveOut(id, bait, note, who, baitPlace, photograph, others, level, sky);
    takeIfAny(stamp, windFrom, &units::Bearing::inDegrees);
    takeIfAny(stamp, windSpeed, &units::Speed::inMetresPerSecond);
    takeIfAny(stamp, waterTemperature, &units::Temperature::inCelsius);
    takeMoment(stamp, start);
    takeMoment(stamp, end);
    takePlace(stamp, place);
    stamp.take(rods.has_value()).takeWord(static_cast<std::uint64_t>(rods.value_or(0)));
    stamp.takeWord(runs.size());
    for (const logbook::Fish& fish : runs) {
        takeFish(stamp, fish);
    }
}

Stamp ofPositions(const base::SharedList<std::size_t>& positions) {
    return ofItems(positions, 0,
                   [](Stamp& stamp, std::size_t position) { stamp.takeWord(position); });
}

void take(Stamp& stamp, const soundings::Gauge& gauge) {
    takeIfAny(stamp, gauge.constantLevel(), &units::WaterLevel::inMetresOnGauge);
    stamp.take(gauge.readings().size());
    for (const soundings::GaugeReading& reading : gauge.readings()) {
        const auto& [time, level] = reading;
        stamp.take(time.time_since_epoch().count()).take(level.inMetresOnGauge());
    }
}

void take(Stamp& stamp, const soundings::Sounder& sounder) {
    const auto& [draft, assumedSoundSpeed, measuresBySound] = sounder;
    stamp.take(draft.inMetres()).take(assumedSoundSpeed.inMetresPerSecond()).take(measuresBySound);
}

void take(Stamp& stamp, const logbook::Wind& wind) {
    const auto& [from, speed] = wind;
    takeIfAny(stamp, from, &units::Bearing::inDegrees);
    takeIfAny(stamp, speed, &units::Speed::inMetresPerSecond);
}

void take(Stamp& stamp, const marks::ExpectedDay& expected) {
    const auto& [day, start, end, wind, windLater, levelChange, waterTemperature, stay] = expected;
    stamp.take(std::chrono::sys_days(day).time_since_epoch().count())
        .take(start.count())
        .take(end.count())
        .take(levelChange.inMetres());
    take(stamp, wind);
    stamp.take(windLater.has_value());
    if (windLater) {
        const auto& [at, later] = *windLater;
        stamp.take(at.count());
        take(stamp, later);
    }
    takeIfAny(stamp, waterTemperature, &units::Temperature::inCelsius);
    takeIfAny(stamp, stay, &std::chrono::seconds::count);
}

void take(Stamp& stamp, const marks::Tackle& tackle) {
    const auto& [boatSpeed, boatLength, bowHeight, bowRope, sternRope, scope, rods, cast, overDepth,
                 toOneAnchor] = tackle;
    stamp.take(boatSpeed.inMetresPerSecond())
        .take(boatLength.inMetres())
        .take(bowHeight.inMetres())
        .take(bowRope.inMetres())
        .take(sternRope.inMetres())
        .take(scope)
        .take(rods)
        .take(cast.inMetres())
        .take(overDepth.inMetres())
        .take(toOneAnchor);
}

void take(Stamp& stamp, const logbook::Season& season) {
    const auto& [first, last] = season;
    for (const std::chrono::month_day day : {first, last}) {
        stamp.take(static_cast<unsigned>(day.month())).take(static_cast<unsigned>(day.day()));
    }
}

} // namespace

void take(Stamp& stamp, geo::LonLat place) {
    const auto& [lon_deg, lat_deg] = place;
    stamp.take(lon_deg).take(lat_deg);
}

void take(Stamp& stamp, const std::vector<geo::LonLat>& places) {
    stamp.take(places.size());
    for (const geo::LonLat& place : places) {
        take(stamp, place);
    }
}

void take(Stamp& stamp, const std::vector<geo::LonLatPiece>& pieces) {
    stamp.take(pieces.size());
    for (const geo::LonLatPiece& piece : pieces) {
        const auto& [outer, islands] = piece;
        take(stamp, outer);
        stamp.take(islands.size());
        for (const geo::LonLatRing& island : islands) {
            take(stamp, island);
        }
    }
}

void take(Stamp& stamp, const soundings::SurveyDay& day) {
    const auto& [id, name, source, sounder, gauge, waterTemperature, agreedOffset, agreedDelay_s,
                 soundings, passStarts, setAsideByHand, keptByHand] = day;
    leaveOut(id, name, source);
    take(stamp, sounder);
    take(stamp, gauge);
    takeIfAny(stamp, waterTemperature, &units::Temperature::inCelsius);
    takeIfAny(stamp, agreedOffset, &units::Length::inMetres);
    takeIfAny(stamp, agreedDelay_s, std::identity());
    stamp.take(ofItems(soundings, 0, takeSounding));
    stamp.take(ofPositions(passStarts));
    stamp.take(ofPositions(setAsideByHand));
    stamp.take(ofPositions(keptByHand));
}

void take(Stamp& stamp, const StructureChoice& choice) {
    const auto& [fineScale, broadScale, dropOffFrom_percent, highGround, leastArea] = choice;
    takeIfAny(stamp, fineScale, &units::Length::inMetres);
    takeIfAny(stamp, broadScale, &units::Length::inMetres);
    takeIfAny(stamp, dropOffFrom_percent, std::identity());
    takeIfAny(stamp, highGround, &units::Length::inMetres);
    takeIfAny(stamp, leastArea, &units::Area::inSquareMetres);
}

void take(Stamp& stamp, const sections::SectionName& name) {
    const auto& [seed, text, number] = name;
    take(stamp, seed);
    stamp.take(std::string_view(text)).take(number);
}

void take(Stamp& stamp, const sections::SectionChange& change) {
    const auto& [kind, places, line] = change;
    stamp.take(kind);
    take(stamp, places);
    take(stamp, line);
}

void take(Stamp& stamp, const contours::Bands& bands) {
    stamp.take(bands.edges().size());
    for (const units::Depth edge : bands.edges()) {
        stamp.take(edge.inMetres());
    }
    stamp.take(bands.limit().inMetres());
}

void take(Stamp& stamp, const logbook::HouseRules& rules) {
    const auto& [rodLimit, closed, season, notes] = rules;
    takeIfAny(stamp, rodLimit, std::identity());
    stamp.take(closed.size());
    for (const logbook::ClosedWater& one : closed) {
        const auto& [name, pieces] = one;
        stamp.take(std::string_view(name));
        take(stamp, pieces);
    }
    stamp.take(season.has_value());
    if (season) {
        take(stamp, *season);
    }
    stamp.take(notes.size());
    for (const std::string& note : notes) {
        stamp.take(std::string_view(note));
    }
}

void take(Stamp& stamp, const std::vector<BannedWater>& banned) {
    stamp.take(banned.size());
    for (const BannedWater& one : banned) {
        const auto& [name, ring] = one;
        stamp.take(std::string_view(name));
        take(stamp, ring);
    }
}

void take(Stamp& stamp, const DayByHand& day) {
    const auto& [order, stays] = day;
    take(stamp, order);
    stamp.take(stays.size());
    for (const DayByHand::Stay& stay : stays) {
        const auto& [place, length] = stay;
        take(stamp, place);
        stamp.take(length.count());
    }
}

void take(Stamp& stamp, const LaidByHand& laid) {
    const auto& [bow, stern, baits, windFrom] = laid;
    for (const std::optional<geo::LonLat>& anchor : {bow, stern}) {
        stamp.take(anchor.has_value());
        if (anchor) {
            take(stamp, *anchor);
        }
    }
    take(stamp, baits);
    takeIfAny(stamp, windFrom, &units::Bearing::inDegrees);
}

void take(Stamp& stamp, const marks::Plan& plan) {
    const auto& [day, tackle, weights, launch, count, tryNew] = plan;
    take(stamp, day);
    take(stamp, tackle);
    for (const marks::FactorKind kind : marks::allFactorKinds) {
        stamp.take(weights.of(kind));
    }
    stamp.take(launch.has_value());
    if (launch) {
        take(stamp, *launch);
    }
    stamp.take(count).take(tryNew);
}

Stamp depthsOf(const base::SharedList<soundings::LeadLineSounding>& leadLine) {
    return ofItems(leadLine, 0, [](Stamp& stamp, const soundings::LeadLineSounding& sounding) {
        const auto& [id, place, depth, bottom] = sounding;
        leaveOut(id, bottom);
        take(stamp, place);
        stamp.take(depth.inMetres());
    });
}

Stamp bottomsOf(const base::SharedList<soundings::LeadLineSounding>& leadLine) {
    return ofItems(leadLine, 1, [](Stamp& stamp, const soundings::LeadLineSounding& sounding) {
        const auto& [id, place, depth, bottom] = sounding;
        leaveOut(id, place, depth); // the drawing has them, and the weed stands on it
        takeIfAny(stamp, bottom, std::identity());
    });
}

Stamp stampOf(const base::SharedList<weed::WeedNote>& notes) {
    return ofItems(notes, 0, [](Stamp& stamp, const weed::WeedNote& note) {
        const auto& [id, place, growth, height, seen, extent, corners] = note;
        leaveOut(id);
        take(stamp, place);
        stamp.take(growth);
        takeIfAny(stamp, height, &units::Length::inMetres);
        takeIfAny(stamp, seen, [](units::Day day) { return int(day.year()); });
        stamp.take(extent);
        take(stamp, corners);
    });
}

Stamp stampOf(const base::SharedList<geo::LonLatPiece>& shoreline) {
    return Stamp(shoreline.workedOutOnce(0, [](const std::vector<geo::LonLatPiece>& pieces) {
        Stamp stamp;
        take(stamp, pieces);
        return stamp.value();
    }));
}

Stamp effortOf(const logbook::KeptLog& log) {
    // A sum can be put together of any parts; which of two stays comes first says nothing to a
    // plan.
    const auto ofChunk = [](std::span<const logbook::Stay> stays) {
        std::uint64_t sum = 0;
        for (const logbook::Stay& stay : stays) {
            Stamp stamp;
            takeStay(stamp, stay);
            sum += stamp.value();
        }
        return sum;
    };
    Stamp stamp;
    stamp.take(log.size());
    return stamp.takeWord(
        log.joined(static_cast<std::size_t>(logbook::OfChunk::effort), ofChunk, std::plus<>(), 0));
}

} // namespace water

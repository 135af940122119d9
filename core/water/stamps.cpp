// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/derive.h"

namespace water {

namespace {

/// Raised whenever a derivation changes so that what was kept from an earlier version no longer
/// holds.
constexpr int methodVersion = 2;

void take(Stamp& stamp, geo::LonLat place) {
    stamp.take(place.lon_deg).take(place.lat_deg);
}

void take(Stamp& stamp, const std::vector<geo::LonLatPiece>& pieces) {
    stamp.take(pieces.size());
    for (const geo::LonLatPiece& piece : pieces) {
        stamp.take(piece.outer.size()).take(piece.islands.size());
        for (const geo::LonLat& p : piece.outer) {
            take(stamp, p);
        }
        for (const geo::LonLatRing& island : piece.islands) {
            stamp.take(island.size());
            for (const geo::LonLat& p : island) {
                take(stamp, p);
            }
        }
    }
}

void take(Stamp& stamp, const soundings::Gauge& gauge) {
    stamp.take(gauge.constantLevel() ? gauge.constantLevel()->inMetresOnGauge() : -1e9);
    for (const soundings::GaugeReading& reading : gauge.readings()) {
        stamp.take(reading.time.time_since_epoch().count()).take(reading.level.inMetresOnGauge());
    }
}

void take(Stamp& stamp, const soundings::SurveyDay& day) {
    take(stamp, day.gauge);
    stamp.take(day.sounder.draft.inMetres())
        .take(day.sounder.assumedSoundSpeed.inMetresPerSecond());
    stamp.take(day.sounder.measuresBySound);
    stamp.take(day.waterTemperature ? day.waterTemperature->inCelsius() : -1e9);
    stamp.take(day.agreedOffset ? day.agreedOffset->inMetres() : 0.0);
    stamp.take(day.agreedDelay_s.value_or(0.0));
    stamp.take(day.soundings.size());
    for (const soundings::Sounding& sounding : day.soundings) {
        take(stamp, sounding.place);
        stamp.take(sounding.shown.inMetres());
        stamp.take(sounding.time ? sounding.time->time_since_epoch().count() : -1);
    }
    for (const auto* positions : {&day.passStarts, &day.setAsideByHand, &day.keptByHand}) {
        stamp.take(std::as_bytes(std::span(*positions)));
        stamp.take(positions->size());
    }
}

Stamp reduceStamp(const Water& water) {
    Stamp stamp;
    stamp.take(methodVersion).take(water.chartLevel.inMetresOnGauge());
    if (water.frame) {
        take(stamp, water.frame->centre());
    }
    take(stamp, water.shoreline);
    for (const soundings::SurveyDay& day : water.days) {
        take(stamp, day);
    }
    return stamp;
}

Stamp drawStamp(const Water& water) {
    Stamp stamp = stampOf(water, Step::reduce);
    stamp.take(water.settings.cell ? water.settings.cell->inMetres() : 0.0);
    for (const soundings::LeadLineSounding& sounding : water.leadLine) {
        take(stamp, sounding.place);
        stamp.take(sounding.depth.inMetres());
    }
    return stamp;
}

Stamp bandsStamp(const Water& water) {
    Stamp stamp = stampOf(water, Step::draw);
    for (const units::Depth edge : water.settings.bands.edges()) {
        stamp.take(edge.inMetres());
    }
    stamp.take(water.settings.bands.limit().inMetres());
    return stamp;
}

Stamp levelStamp(const Water& water) {
    Stamp stamp = stampOf(water, Step::bands);
    stamp.take(water.plan.day.levelChange.inMetres());
    return stamp;
}

Stamp structureStamp(const Water& water) {
    Stamp stamp = stampOf(water, Step::bands);
    if (water.plan.launch) {
        take(stamp, *water.plan.launch);
    }
    const StructureChoice& chosen = water.settings.structure;
    stamp.take(chosen.fineScale ? chosen.fineScale->inMetres() : -1.0)
        .take(chosen.broadScale ? chosen.broadScale->inMetres() : -1.0)
        .take(chosen.dropOffFrom_percent.value_or(-1.0))
        .take(chosen.highGround ? chosen.highGround->inMetres() : -1.0)
        .take(chosen.leastArea ? chosen.leastArea->inSquareMetres() : -1.0);
    return stamp;
}

Stamp weedStamp(const Water& water) {
    Stamp stamp = stampOf(water, Step::draw);
    stamp.take(water.settings.secchi ? water.settings.secchi->inMetres() : 0.0);
    stamp.take(water.settings.weedLeft);
    for (const weed::WeedNote& note : water.weedNotes) {
        take(stamp, note.place);
        stamp.take(note.growth).take(note.height ? note.height->inMetres() : -1.0);
    }
    for (const soundings::LeadLineSounding& sounding : water.leadLine) {
        stamp.take(sounding.bottom ? static_cast<int>(*sounding.bottom) : -1);
    }
    return stamp;
}

Stamp sectionsStamp(const Water& water) {
    Stamp stamp = stampOf(water, Step::structure);
    stamp.take(stampOf(water, Step::weed)).take(water.settings.sectionArea.inSquareMetres());
    for (const logbook::ClosedWater& closed : water.houseRules.closed) {
        take(stamp, closed.pieces);
    }
    for (const sections::SectionName& name : water.sectionNames) {
        take(stamp, name.seed);
        stamp.take(name.name);
    }
    for (const sections::SectionChange& change : water.sectionChanges) {
        stamp.take(change.kind);
        for (const auto* points : {&change.places, &change.line}) {
            stamp.take(points->size());
            for (const geo::LonLat& p : *points) {
                take(stamp, p);
            }
        }
    }
    return stamp;
}

} // namespace

Stamp stampOf(const Water& water, Step step) {
    switch (step) {
    case Step::reduce:
        return reduceStamp(water);
    case Step::draw:
        return drawStamp(water);
    case Step::bands:
        return bandsStamp(water);
    case Step::level:
        return levelStamp(water);
    case Step::structure:
        return structureStamp(water);
    case Step::weed:
        return weedStamp(water);
    case Step::sections:
        return sectionsStamp(water);
    }
    return {};
}

} // namespace water

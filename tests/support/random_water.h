// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/water/document/water.h"

#include <algorithm>
#include <array>
#include <cstdint>
#include <random>
#include <string>

namespace support {

/// Makes waters out of nothing that makes sense, each value anywhere in its domain, every optional
/// now and then absent: for claims that must hold for any water.
class RandomWater {
public:
    explicit RandomWater(std::uint64_t seed) : random_(seed) {}

    [[nodiscard]] water::Water make(std::size_t soundingsADay = 300) {
        water::Water water;
        water.name = text();
        water.clock = units::Clock::inZone(yes() ? "Europe/London" : "America/St_Johns").value();
        water.chartLevel = units::WaterLevel::metresOnGauge(number(-5.0, 400.0));
        if (yes()) {
            water.frame =
                geo::WaterFrame::centredOn({number(-179.0, 179.0), number(-80.0, 80.0)}).value();
        }
        water.shoreline = pieces();
        for (int i = 0, count = upTo(4); i < count; ++i) {
            water.days.push_back(day(i, soundingsADay));
        }
        std::ranges::shuffle(water.days, random_);
        addNotes(water);
        water.houseRules = rules();
        water.settings = settings();
        water.plan = plan();
        for (int i = 0, count = upTo(12); i < count; ++i) {
            water.log.push_back(stay());
        }
        return water;
    }

    [[nodiscard]] bool yes() { return upTo(1) == 1; }
    [[nodiscard]] int upTo(int most) {
        return static_cast<int>(random_() % (static_cast<std::uint64_t>(most) + 1));
    }
    [[nodiscard]] double number(double low, double high) {
        return low + (high - low) * static_cast<double>(random_() >> 11U) * 0x1p-53;
    }
    [[nodiscard]] std::string text() {
        static const std::array<const char*, 9> words{"",
                                                      "Heron Bay",
                                                      "O'Hara's \"deep\"",
                                                      "Øvre Trollvatn",
                                                      "湖の北",
                                                      "a,b;c\td",
                                                      "två\nrader",
                                                      "🎣",
                                                      "50 % DROP TABLE soundings; --"};
        return words[static_cast<std::size_t>(upTo(static_cast<int>(words.size()) - 1))];
    }
    [[nodiscard]] geo::LonLat place() { return {number(-180.0, 180.0), number(-90.0, 90.0)}; }
    [[nodiscard]] units::Moment moment() {
        return units::Moment(
            std::chrono::milliseconds(static_cast<std::int64_t>(number(0.0, 4.1e12))));
    }

private:
    [[nodiscard]] geo::LonLatRing ring() {
        geo::LonLatRing ring;
        for (int i = 0, count = 3 + upTo(20); i < count; ++i) {
            ring.push_back(place());
        }
        return ring;
    }
    [[nodiscard]] std::vector<geo::LonLatPiece> pieces() {
        std::vector<geo::LonLatPiece> pieces;
        for (int i = 0, count = upTo(3); i < count; ++i) {
            pieces.push_back({ring(), {}});
            for (int k = 0, islands = upTo(3); k < islands; ++k) {
                pieces.back().islands.push_back(ring());
            }
        }
        return pieces;
    }
    [[nodiscard]] soundings::Gauge gauge() {
        const int kind = upTo(2);
        if (kind == 0) {
            return {};
        }
        if (kind == 1) {
            return soundings::Gauge::constant(
                units::WaterLevel::metresOnGauge(number(-2.0, 300.0)));
        }
        std::vector<soundings::GaugeReading> readings;
        for (int i = 0, count = 1 + upTo(5); i < count; ++i) {
            readings.push_back({moment(), units::WaterLevel::metresOnGauge(number(-2.0, 300.0))});
        }
        return soundings::Gauge::table(std::move(readings));
    }
    [[nodiscard]] std::vector<std::size_t> positions(std::size_t below) {
        std::vector<std::size_t> positions;
        for (std::size_t i = 0; i < below; ++i) {
            if (upTo(20) == 0) {
                positions.push_back(i);
            }
        }
        return positions;
    }
    [[nodiscard]] soundings::SurveyDay day(int position, std::size_t most) {
        soundings::SurveyDay day;
        day.id = soundings::SurveyDayId(position * 7 + 1 + upTo(5));
        day.name = text();
        day.source = text();
        day.sounder = {units::Depth::metres(number(0.0, 3.0)),
                       units::Speed::metresPerSecond(number(1300.0, 1700.0)), yes()};
        day.gauge = gauge();
        if (yes()) {
            day.waterTemperature = units::Temperature::celsius(number(0.0, 25.0));
        }
        if (yes()) {
            day.agreedOffset = units::Length::metres(number(-0.5, 0.5));
        }
        if (yes()) {
            day.agreedDelay_s = number(-3.0, 3.0);
        }
        const int count = upTo(static_cast<int>(most));
        const bool hasTimes = yes();
        for (int i = 0; i < count; ++i) {
            day.soundings.edit().push_back(
                {place(), units::Depth::metres(number(0.0, 80.0)),
                 hasTimes && upTo(9) > 0 ? std::optional(moment()) : std::nullopt});
        }
        day.passStarts = positions(day.soundings.size());
        day.setAsideByHand = positions(day.soundings.size());
        day.keptByHand = positions(day.soundings.size());
        return day;
    }
    [[nodiscard]] sections::SectionChange sectionChange() {
        using Kind = sections::SectionChange::Kind;
        sections::SectionChange change;
        change.kind = static_cast<Kind>(upTo(2));
        if (change.kind != Kind::split) {
            change.places = {place(), place()};
        }
        if (change.kind != Kind::join) {
            change.line = ring();
        }
        return change;
    }
    void addNotes(water::Water& water) {
        for (int i = 0, count = upTo(6); i < count; ++i) {
            water.leadLine.edit().push_back({soundings::LeadLineId(i + 50), place(),
                                             units::Depth::metres(number(0.0, 40.0)),
                                             std::nullopt});
            if (yes()) {
                water.leadLine.edit().back().bottom = static_cast<soundings::Bottom>(upTo(3));
            }
            water.weedNotes.edit().push_back({weed::WeedNoteId(i + 70), place(),
                                              static_cast<weed::Growth>(upTo(2)), std::nullopt});
            if (yes()) {
                water.weedNotes.edit().back().height = units::Length::metres(number(0.0, 3.0));
            }
            if (yes()) {
                const auto extent = yes() ? weed::Extent::line : weed::Extent::area;
                water.weedNotes.edit().back().extent = extent;
                water.weedNotes.edit().back().corners = ring();
            }
            if (yes()) {
                water.weedNotes.edit().back().seen =
                    units::Day(std::chrono::year(2020 + upTo(6)), std::chrono::month(8),
                               std::chrono::day(static_cast<unsigned>(1 + upTo(27))));
            }
            water.places.push_back({text(), place()});
            water.sectionNames.push_back({place(), text(), upTo(5)});
            water.numbering.waters.edit().push_back(
                {1 + 3 * i, yes(), {{ring(), {}}, {ring(), {ring()}}}});
            water.pinnedMarks.push_back({text(), place(), laid()});
            addWishes(water);
            addSheet(water);
            water.sectionChanges.push_back(sectionChange());
        }
    }
    /// With a wind only where there is something that was laid in it.
    [[nodiscard]] water::LaidByHand laid() {
        water::LaidByHand laid;
        if (yes()) {
            laid.bow = place();
            laid.windFrom = units::Bearing::degrees(upTo(359));
        }
        if (yes()) {
            laid.baits = {place(), place()};
        }
        return laid;
    }
    void addWishes(water::Water& water) {
        water.banned.push_back({text(), ring()});
        water.beliefProfiles.push_back({text(), {}});
        water.beliefProfiles.back().weights.set(marks::FactorKind::shelter, number(0.0, 2.0));
        water.dayByHand.order.push_back(place());
        water.dayByHand.stays.push_back({place(), std::chrono::seconds(300 + upTo(40'000))});
    }
    void addSheet(water::Water& water) {
        const units::Day day = std::chrono::sys_days(std::chrono::days(20'000)) +
                               std::chrono::days(static_cast<int>(water.sheets.size()));
        const units::Moment from{std::chrono::milliseconds(1000L * upTo(1'700'000'000))};
        water.sheets.push_back({day, {{upTo(9), text(), place(), from, from}}});
    }
    [[nodiscard]] std::chrono::month_day dayOfYear() {
        return {std::chrono::month(static_cast<unsigned>(1 + upTo(11))),
                std::chrono::day(static_cast<unsigned>(1 + upTo(28)))};
    }
    [[nodiscard]] logbook::HouseRules rules() {
        logbook::HouseRules rules;
        if (yes()) {
            rules.rodLimit = upTo(6);
        }
        for (int i = 0, count = upTo(3); i < count; ++i) {
            rules.closed.push_back({text(), pieces()});
            rules.notes.push_back(text());
        }
        if (yes()) {
            rules.season = logbook::Season{dayOfYear(), dayOfYear()};
        }
        return rules;
    }
    [[nodiscard]] water::Settings settings() {
        water::Settings settings;
        if (yes()) {
            settings.cell = units::Length::metres(number(0.5, 100.0));
        }
        if (yes()) {
            settings.secchi = units::Depth::metres(number(0.1, 40.0));
        }
        std::vector<units::Depth> edges;
        double edge_m = 0.0;
        for (int i = 0, count = 1 + upTo(7); i < count; ++i) {
            edge_m += number(0.1, 4.0);
            edges.push_back(units::Depth::metres(edge_m));
        }
        settings.bands =
            contours::Bands::make(edges, units::Depth::metres(number(1.0, 30.0))).value();
        settings.sectionArea = units::Area::acres(number(1.0, 100.0));
        settings.weedLeft = number(0.0, 1.0);
        addStructure(settings.structure);
        return settings;
    }
    void addStructure(water::StructureChoice& chosen) {
        if (yes()) {
            chosen.fineScale = units::Length::metres(number(3.0, 15.0));
        }
        if (yes()) {
            chosen.broadScale = units::Length::metres(number(20.0, 500.0));
        }
        if (yes()) {
            chosen.dropOffFrom_percent = number(1.0, 200.0);
        }
        if (yes()) {
            chosen.highGround = units::Length::metres(number(0.05, 20.0));
        }
        if (yes()) {
            chosen.leastArea = units::Area::hectares(number(0.0, 10.0));
        }
    }
    [[nodiscard]] marks::Tackle tackle() {
        marks::Tackle tackle;
        tackle.scope = number(1.5, 10.0);
        tackle.rods = 1 + upTo(7);
        tackle.cast = units::Length::feet(number(20.0, 300.0));
        tackle.boatSpeed = units::Speed::knots(number(0.5, 12.0));
        tackle.boatLength = units::Length::metres(number(2.0, 12.0));
        tackle.bowHeight = units::Length::metres(number(0.0, 2.0));
        tackle.bowRope = units::Length::metres(number(5.0, 200.0));
        tackle.sternRope = units::Length::metres(number(5.0, 200.0));
        tackle.overDepth = units::Length::feet(number(0.0, 9.0));
        tackle.toOneAnchor = yes();
        return tackle;
    }
    [[nodiscard]] marks::Plan plan() {
        marks::Plan plan;
        plan.day.day = units::Clock().dayOf(moment());
        plan.day.start = std::chrono::seconds(upTo(40'000));
        plan.day.end = plan.day.start + std::chrono::seconds(upTo(40'000));
        plan.day.wind = {units::Bearing::degrees(number(0.0, 360.0)),
                         units::Speed::metresPerSecond(number(0.0, 20.0))};
        plan.day.levelChange = units::Length::metres(number(-3.0, 3.0));
        if (yes()) {
            plan.day.waterTemperature = units::Temperature::fahrenheit(number(32.0, 80.0));
        }
        if (yes()) {
            plan.day.stay = std::chrono::minutes(5 + upTo(700));
        }
        if (yes()) {
            plan.launch = place();
        }
        plan.tackle = tackle();
        for (const marks::FactorKind kind : marks::allFactorKinds) {
            plan.weights.set(kind, number(0.0, 3.0));
        }
        plan.count = 1 + upTo(39);
        plan.tryNew = number(0.0, 1.0);
        return plan;
    }

public:
    [[nodiscard]] logbook::Fish fish() {
        logbook::Fish fish;
        fish.id = logbook::FishId(1 + upTo(1'000'000));
        if (yes()) {
            fish.time = moment();
        }
        fish.landed = yes();
        fish.species = text();
        fish.bait = text();
        fish.note = text();
        if (yes()) {
            fish.weight = units::Weight::pounds(number(0.1, 40.0));
        }
        if (yes()) {
            fish.length = units::Length::metres(number(0.1, 1.5));
        }
        if (yes()) {
            fish.baitDepth = units::Depth::feet(number(0.0, 60.0));
        }
        fish.who = text();
        fish.hooked = text();
        fish.photograph = text();
        if (yes()) {
            fish.returned = yes();
        }
        if (yes()) {
            fish.baitPlace = place();
        }
        fish.others = others();
        return fish;
    }
    [[nodiscard]] std::vector<logbook::OtherField> others() {
        std::vector<logbook::OtherField> fields;
        for (const char* column : {"Mond", "moon", "pressure, hPa"}) {
            if (std::string said = text(); !said.empty() && yes()) {
                fields.push_back({column, std::move(said)});
            }
        }
        return fields;
    }
    [[nodiscard]] logbook::Stay stay() {
        logbook::Stay stay;
        stay.id = logbook::StayId(1 + upTo(1'000'000));
        stay.start = moment();
        stay.end = stay.start + std::chrono::seconds(upTo(20'000));
        stay.place = place();
        stay.rods = 1 + upTo(5);
        stay.bait = text();
        stay.note = text();
        if (yes()) {
            stay.conditions.windFrom = units::Bearing::degrees(number(0.0, 360.0));
        }
        if (yes()) {
            stay.conditions.waterTemperature = units::Temperature::celsius(number(0.0, 25.0));
        }
        if (yes()) {
            stay.conditions.windSpeed = units::Speed::metresPerSecond(number(0.0, 20.0));
        }
        if (yes()) {
            stay.conditions.level = units::WaterLevel::metresOnGauge(number(-5.0, 400.0));
        }
        stay.conditions.sky = text();
        stay.who = text();
        stay.photograph = text();
        if (yes()) {
            stay.baitPlace = place();
        }
        stay.others = others();
        for (int i = 0, count = upTo(4); i < count; ++i) {
            stay.runs.push_back(fish());
        }
        return stay;
    }

private:
    std::mt19937_64 random_;
};

} // namespace support

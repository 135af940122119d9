// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readers/read_water_facts.h"

#include "core/readers/table_records.h"
#include "core/readers/whole_text.h"

#include <fmt/format.h>
#include <nlohmann/json.hpp>

namespace readers {

namespace {

using base::ErrorKind;
using nlohmann::json;

geo::LonLat placeOf(const json& entry) {
    return {entry.at("lon").get<double>(), entry.at("lat").get<double>()};
}

WaterFacts factsOf(const json& all, const units::Clock& clock) {
    WaterFacts facts;
    facts.name = all.at("name").get<std::string>();
    facts.isInvented = all.value("invented", false);
    facts.clock = clock;
    if (all.contains("chart_level_m")) {
        facts.chartLevel = units::WaterLevel::metresOnGauge(all["chart_level_m"].get<double>());
    }
    if (all.contains("secchi_depth_m")) {
        facts.secchi = units::Depth::metres(all["secchi_depth_m"].get<double>());
    }
    if (all.contains("launch")) {
        facts.launch = placeOf(all["launch"]);
    }
    for (const json& entry : all.value("places", json::array())) {
        facts.places.push_back({entry.at("name").get<std::string>(), placeOf(entry)});
    }
    return facts;
}

SurveyDayFacts dayFactsOf(const TableRecords& records) {
    SurveyDayFacts facts;
    facts.day = records.text("day");
    facts.file = records.text("file");
    if (const auto level_m = records.number("water_level_m")) {
        facts.level = units::WaterLevel::metresOnGauge(*level_m);
    }
    if (const auto water_c = records.number("water_temperature_c")) {
        facts.waterTemperature = units::Temperature::celsius(*water_c);
    }
    if (const auto draft_m = records.number("draft_m")) {
        facts.draft = units::Depth::metres(*draft_m);
    }
    if (const auto speed_m_s = records.number("assumed_sound_speed_m_s")) {
        facts.assumedSoundSpeed = units::Speed::metresPerSecond(*speed_m_s);
    }
    facts.unit = depthUnitNamed(records.text("depth_unit"));
    return facts;
}

} // namespace

base::Result<WaterFacts> readWaterFacts(const std::filesystem::path& path) {
    const auto text = wholeText(path);
    if (!text) {
        return std::unexpected(text.error());
    }
    try {
        const json all = json::parse(*text);
        const auto clock = units::Clock::inZone(all.value("time_zone", "Etc/UTC"));
        if (!clock) {
            return std::unexpected(clock.error());
        }
        return factsOf(all, *clock);
    } catch (const json::exception& fault) {
        return base::fail(ErrorKind::unusableInput,
                          fmt::format("the water's facts cannot be read ({})", fault.what()),
                          path.string(), "give JSON as the sample survey's water.json has it");
    }
}

base::Result<std::vector<SurveyDayFacts>> readSurveyDayFacts(const std::filesystem::path& path) {
    auto records = TableRecords::open(path, {"day", "file"});
    if (!records) {
        return std::unexpected(records.error());
    }
    ReadingReport report;
    std::vector<SurveyDayFacts> days;
    while (records->next(report)) {
        days.push_back(dayFactsOf(*records));
        if (days.back().file.empty()) {
            return base::fail(ErrorKind::unusableInput, "a day names no file",
                              fmt::format("{}, line {}", records->where(), records->line()),
                              "name the file of its soundings");
        }
    }
    if (days.empty() || report.refusedCount() > 0) {
        return base::fail(ErrorKind::unusableInput,
                          days.empty() ? "it has no day" : report.refusedText(), path.string(),
                          "give one row for each day, with a cell for each column");
    }
    return days;
}

} // namespace readers

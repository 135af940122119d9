// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readers/read_water_facts.h"

#include "core/base/harmless_text.h"
#include "core/readers/table_records.h"
#include "core/readers/whole_text.h"

#include <array>

#include <fmt/format.h>
#include <nlohmann/json.hpp>

namespace readers {

namespace {

using base::ErrorKind;
using nlohmann::json;

/// What makes no sense; thrown within this file alone.
struct BadFact {
    std::string what;
    std::string where;
};

geo::LonLat placeOf(const json& entry, const std::string& name) {
    const geo::LonLat place{entry.at("lon").get<double>(), entry.at("lat").get<double>()};
    if (!geo::isOnEarth(place)) {
        throw BadFact{"the place is not on the Earth", name};
    }
    return place;
}

/// A number that the world allows.
double numberOf(const json& all, const char* name, double least, double most) {
    const double number = all[name].get<double>();
    if (!(number >= least && number <= most)) {
        throw BadFact{fmt::format("{} is not between {} and {}", number, least, most), name};
    }
    return number;
}

WaterFacts factsOf(const json& all, const units::Clock& clock) {
    WaterFacts facts;
    facts.name = base::harmless(all.at("name").get<std::string>());
    facts.isInvented = all.value("invented", false);
    facts.clock = clock;
    if (all.contains("chart_level_m")) {
        facts.chartLevel =
            units::WaterLevel::metresOnGauge(numberOf(all, "chart_level_m", -1e4, 1e4));
    }
    if (all.contains("secchi_depth_m")) {
        facts.secchi = units::Depth::metres(numberOf(all, "secchi_depth_m", 0.0, 100.0));
    }
    if (all.contains("launch")) {
        facts.launch = placeOf(all["launch"], "launch");
    }
    for (const json& entry : all.value("places", json::array())) {
        const auto name = base::harmless(entry.at("name").get<std::string>());
        facts.places.push_back({name, placeOf(entry, name)});
    }
    return facts;
}

/// The first number of a day that is none or cannot be; empty where all are well.
std::string oddNumber(const TableRecords& records) {
    struct Range {
        const char* column;
        double least;
        double most;
    };
    constexpr std::array ranges{Range{"water_level_m", -1e4, 1e4},
                                Range{"water_temperature_c", -3, 50}, Range{"draft_m", 0, 30},
                                Range{"assumed_sound_speed_m_s", 1000, 2000}};
    for (const Range& range : ranges) {
        const auto number = records.number(range.column);
        const bool isNone = !number && !records.text(range.column).empty();
        if (isNone || (number && (*number < range.least || *number > range.most))) {
            return range.column;
        }
    }
    return {};
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
            base::Error error = clock.error();
            error.kind = ErrorKind::unusableInput;
            error.where = path.filename().string() + ", time_zone";
            return std::unexpected(std::move(error));
        }
        return factsOf(all, *clock);
    } catch (const BadFact& bad) {
        return base::fail(ErrorKind::unusableInput, bad.what,
                          path.filename().string() + ", " + bad.where, "put that entry right");
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
        if (const std::string odd = oddNumber(*records); !odd.empty()) {
            return base::fail(ErrorKind::unusableInput,
                              fmt::format("{} makes no sense: '{}'", odd, records->text(odd)),
                              fmt::format("{}, line {}", records->where(), records->line()),
                              "put that number right, or leave the cell empty");
        }
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

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/outputs/write_table.h"

#include "core/base/number_text.h"
#include "core/base/whole_file.h"
#include "core/outputs/table_field.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdint>
#include <optional>
#include <set>
#include <string>
#include <string_view>

namespace outputs {

namespace {

constexpr int positionDecimals = 7; ///< Of a degree: a centimetre.
constexpr int depthDecimals = 3;    ///< Of a metre.

std::string depth(double depth_m) {
    return std::isfinite(depth_m) ? base::fixedText(depth_m, depthDecimals) : std::string();
}

void addDay(std::string& table, const soundings::SurveyDay& day,
            const reduction::ReducedDay* reduced) {
    const std::string name = field(day.name);
    for (std::size_t i = 0; i < day.soundings.size(); ++i) {
        const soundings::Sounding& sounding = day.soundings[i];
        table += base::fixedText(sounding.place.lon_deg, positionDecimals) + ',' +
                 base::fixedText(sounding.place.lat_deg, positionDecimals) + ',' +
                 (sounding.time ? units::isoText(*sounding.time) : std::string()) + ',' + name +
                 ',' + depth(sounding.shown.inMetres()) + ',';
        if (reduced != nullptr) {
            table += depth(reduced->depth_m[i]) + ',';
            table += soundings::nameOf(reduced->verdicts[i]);
        } else {
            table += ',';
        }
        table += '\n';
    }
}

/// Columns of the log table, in the order in which they are written.
enum Column : std::size_t {
    kind,
    stayNumber,
    start,
    end,
    time,
    lon,
    lat,
    rods,
    bait,
    species,
    weight,
    length,
    baitDepth,
    windFrom,
    windSpeed,
    waterTemperature,
    note,
    columnCount
};

constexpr const char* logHeader =
    "kind,stay,start,end,time,lon,lat,rods,bait,species,weight_kg,length_mm,bait_depth_m,"
    "wind_from_deg,wind_speed_m_s,water_temperature_c,note\n";

using Row = std::array<std::string, columnCount>;

void addRow(std::string& table, const Row& row) {
    for (std::size_t i = 0; i < row.size(); ++i) {
        table += (i == 0 ? "" : ",") + row[i];
    }
    table += '\n';
}

/// Millimetres that read back as just this length: the plainest number that does.
std::string millimetres(units::Length length) {
    const double exact_mm = length.inMetres() * 1000.0;
    for (int decimals = 0; decimals <= 12; ++decimals) {
        const std::string text = base::fixedText(exact_mm, decimals);
        if (base::numberFrom(text).value_or(NAN) / 1000.0 == length.inMetres()) {
            return text;
        }
    }
    return base::exactText(exact_mm);
}

Row stayRow(const logbook::Stay& stay, std::int64_t number, const units::Clock& clock) {
    Row row;
    row[kind] = "stay";
    row[stayNumber] = std::to_string(number);
    row[start] = units::isoLocalText(stay.start, clock);
    row[end] = units::isoLocalText(stay.end, clock);
    row[lon] = base::exactText(stay.place.lon_deg);
    row[lat] = base::exactText(stay.place.lat_deg);
    row[rods] = stay.rods ? std::to_string(*stay.rods) : std::string();
    row[bait] = field(stay.bait);
    if (stay.conditions.windFrom) {
        row[windFrom] = base::exactText(stay.conditions.windFrom->inDegrees());
    }
    if (stay.conditions.windSpeed) {
        row[windSpeed] = base::exactText(stay.conditions.windSpeed->inMetresPerSecond());
    }
    if (stay.conditions.waterTemperature) {
        row[waterTemperature] = base::exactText(stay.conditions.waterTemperature->inCelsius());
    }
    row[note] = field(stay.note);
    return row;
}

Row runRow(const logbook::Fish& fish, std::int64_t stay, const units::Clock& clock) {
    Row row;
    row[kind] = fish.landed ? "fish" : "run";
    row[stayNumber] = std::to_string(stay);
    row[time] = units::isoLocalText(fish.time, clock);
    row[bait] = field(fish.bait);
    row[species] = field(fish.species);
    if (fish.weight) {
        row[weight] = base::exactText(fish.weight->inKilograms());
    }
    if (fish.length) {
        row[length] = millimetres(*fish.length);
    }
    if (fish.baitDepth) {
        row[baitDepth] = base::exactText(fish.baitDepth->inMetres());
    }
    row[note] = field(fish.note);
    return row;
}

/// True where the stays' own numbers tell them apart.
bool haveOwnNumbers(const logbook::KeptLog& log) {
    std::set<std::int64_t> numbers;
    return std::ranges::all_of(log, [&](const logbook::Stay& stay) {
        return stay.id.number() > 0 && numbers.insert(stay.id.number()).second;
    });
}

} // namespace

base::Result<void> writeSoundingsTable(const std::filesystem::path& path,
                                       std::span<const soundings::SurveyDay> days,
                                       const reduction::ReducedSurvey* survey) {
    std::string table = "lon,lat,time,survey_day,shown_depth_m,depth_m,set_aside\n";
    for (std::size_t i = 0; i < days.size(); ++i) {
        const bool isReduced = survey != nullptr && i < survey->days.size() &&
                               survey->days[i].depth_m.size() == days[i].soundings.size() &&
                               survey->days[i].verdicts.size() == days[i].soundings.size();
        addDay(table, days[i], isReduced ? &survey->days[i] : nullptr);
    }
    return base::writeWholeFile(path, table);
}

base::Result<void> writeLogTable(const std::filesystem::path& path, const logbook::KeptLog& log,
                                 const units::Clock& clock) {
    std::string table = logHeader;
    const bool areNumbered = haveOwnNumbers(log);
    std::int64_t position = 0;
    for (const logbook::Stay& stay : log) {
        const std::int64_t number = areNumbered ? stay.id.number() : ++position;
        addRow(table, stayRow(stay, number, clock));
        for (const logbook::Fish& fish : stay.runs) {
            addRow(table, runRow(fish, number, clock));
        }
    }
    return base::writeWholeFile(path, table);
}

} // namespace outputs

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/outputs/write_table.h"

#include "core/base/number_text.h"
#include "core/base/whole_file.h"
#include "core/logbook/log_columns.h"
#include "core/outputs/table_field.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <vector>

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

using logbook::LogColumn;

/// A row of the log table: its own columns, then the others.
class Row {
public:
    explicit Row(std::size_t others) : cells_(logbook::writtenLogColumns + others) {}

    std::string& operator[](LogColumn column) { return cells_[static_cast<std::size_t>(column)]; }
    void setText(LogColumn column, std::string_view text) {
        (*this)[column] = quotedField(logbook::guarded(text));
    }
    void setPlace(LogColumn lon, LogColumn lat, const std::optional<geo::LonLat>& place) {
        if (place) {
            (*this)[lon] = base::exactText(place->lon_deg);
            (*this)[lat] = base::exactText(place->lat_deg);
        }
    }
    template <class Quantity>
    void set(LogColumn column, const std::optional<Quantity>& quantity,
             double (Quantity::*read)() const) {
        if (quantity) {
            (*this)[column] = base::exactText(((*quantity).*read)());
        }
    }
    void setOthers(const std::vector<logbook::OtherField>& fields,
                   const std::set<std::string>& names) {
        for (const logbook::OtherField& field : fields) {
            const auto at = std::distance(names.begin(), names.find(field.column));
            cells_[logbook::writtenLogColumns + static_cast<std::size_t>(at)] =
                quotedField(logbook::guarded(field.text));
        }
    }
    void addTo(std::string& table) const {
        for (std::size_t i = 0; i < cells_.size(); ++i) {
            table += (i == 0 ? "" : ",") + cells_[i];
        }
        table += '\n';
    }

private:
    std::vector<std::string> cells_;
};

std::string headerWith(const std::set<std::string>& others) {
    std::string header;
    for (std::size_t i = 0; i < logbook::writtenLogColumns; ++i) {
        header += i == 0 ? "" : ",";
        header += logbook::logColumnNames[i];
    }
    for (const std::string& name : others) {
        header += ',' + quotedField(logbook::guarded(name));
    }
    return header + '\n';
}

/// The names of all fields that are no column of a log.
std::set<std::string> othersIn(const logbook::KeptLog& log) {
    std::set<std::string> names;
    const auto take = [&names](const std::vector<logbook::OtherField>& fields) {
        for (const logbook::OtherField& field : fields) {
            names.insert(field.column);
        }
    };
    for (const logbook::Stay& stay : log) {
        take(stay.others);
        for (const logbook::Fish& fish : stay.runs) {
            take(fish.others);
        }
    }
    return names;
}

/// The digits of the metres with the point moved by three, so that no digit is lost.
std::string millimetres(units::Length length) {
    std::string text = base::exactText(length.inMetres());
    if (text.find('e') != std::string::npos) {
        text = base::fixedText(length.inMetres(), 17);
    }
    std::size_t point = text.find('.');
    point = point == std::string::npos ? text.size() : point;
    std::string whole = text.substr(0, point);
    std::string rest = point < text.size() ? text.substr(point + 1) : std::string();
    rest.resize(std::max<std::size_t>(rest.size(), 3), '0');
    whole += rest.substr(0, 3);
    rest.erase(0, 3);
    whole.erase(0, std::min(whole.find_first_not_of('0'), whole.size() - 1));
    return rest.empty() ? whole : whole + '.' + rest;
}

Row stayRow(const logbook::Stay& stay, std::int64_t number, const units::Clock& clock,
            const std::set<std::string>& others) {
    Row row(others.size());
    row[LogColumn::kind] = "stay";
    row[LogColumn::stay] = std::to_string(number);
    row[LogColumn::start] = units::isoLocalText(stay.start, clock);
    row[LogColumn::end] = units::isoLocalText(stay.end, clock);
    row.setPlace(LogColumn::lon, LogColumn::lat, stay.place);
    row[LogColumn::rods] = stay.rods ? std::to_string(*stay.rods) : std::string();
    row.setText(LogColumn::bait, stay.bait);
    const logbook::Conditions& conditions = stay.conditions;
    row.set(LogColumn::windFromDeg, conditions.windFrom, &units::Bearing::inDegrees);
    row.set(LogColumn::windSpeedMS, conditions.windSpeed, &units::Speed::inMetresPerSecond);
    row.set(LogColumn::waterTemperatureC, conditions.waterTemperature,
            &units::Temperature::inCelsius);
    row.set(LogColumn::levelM, conditions.level, &units::WaterLevel::inMetresOnGauge);
    row.setText(LogColumn::sky, conditions.sky);
    row.setText(LogColumn::note, stay.note);
    row.setPlace(LogColumn::baitLon, LogColumn::baitLat, stay.baitPlace);
    row.setText(LogColumn::photograph, stay.photograph);
    row.setText(LogColumn::who, stay.who);
    row.setOthers(stay.others, others);
    return row;
}

Row runRow(const logbook::Fish& fish, std::int64_t stay, const units::Clock& clock,
           const std::set<std::string>& others) {
    Row row(others.size());
    row[LogColumn::kind] = fish.landed ? "fish" : "run";
    row[LogColumn::stay] = std::to_string(stay);
    row[LogColumn::time] = fish.time ? units::isoLocalText(*fish.time, clock) : std::string();
    row.setText(LogColumn::bait, fish.bait);
    row.setText(LogColumn::species, fish.species);
    row.set(LogColumn::weightKg, fish.weight, &units::Weight::inKilograms);
    row[LogColumn::lengthMm] = fish.length ? millimetres(*fish.length) : std::string();
    row.set(LogColumn::baitDepthM, fish.baitDepth, &units::Depth::inMetres);
    row.setText(LogColumn::note, fish.note);
    row.setPlace(LogColumn::baitLon, LogColumn::baitLat, fish.baitPlace);
    row.setText(LogColumn::hooked, fish.hooked);
    if (fish.returned) {
        row[LogColumn::returned] = *fish.returned ? "yes" : "no";
    }
    row.setText(LogColumn::photograph, fish.photograph);
    row.setText(LogColumn::who, fish.who);
    row.setOthers(fish.others, others);
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
    const std::set<std::string> others = othersIn(log);
    std::string table = headerWith(others);
    const bool areNumbered = haveOwnNumbers(log);
    std::int64_t position = 0;
    for (const logbook::Stay& stay : log) {
        const std::int64_t number = areNumbered ? stay.id.number() : ++position;
        stayRow(stay, number, clock, others).addTo(table);
        for (const logbook::Fish& fish : stay.runs) {
            runRow(fish, number, clock, others).addTo(table);
        }
    }
    return base::writeWholeFile(path, table);
}

} // namespace outputs

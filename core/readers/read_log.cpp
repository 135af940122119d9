// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readers/read_log.h"

#include "core/base/number_text.h"
#include "core/readers/table_records.h"
#include "core/units/written.h"

#include <algorithm>
#include <array>
#include <map>

namespace readers {

namespace {

/// A run whose stay is yet to be found.
struct LooseRun {
    std::int64_t stay = 0;
    logbook::Fish fish;
    std::size_t line = 0;
    std::string row;
};

/// The amount of a column in the unit that its name gives: a number as it stands, or as people
/// write it with its unit ("21lb 4oz" under weight_kg, "SW" under wind_from_deg).
std::optional<double> amountIn(const TableRecords& records, std::string_view column) {
    if (const auto number = records.number(column)) {
        return number;
    }
    const std::string text = records.text(column);
    const auto si = [](const auto& amount, auto read) {
        return amount ? std::optional<double>(read(*amount)) : std::nullopt;
    };
    constexpr auto bare = units::Bare::metric;
    if (column == "weight_kg") {
        return si(units::weightWritten(text, bare), [](auto w) { return w.inKilograms(); });
    }
    if (column == "length_mm") {
        return si(units::fishLengthWritten(text, bare),
                  [](auto l) { return 1000.0 * l.inMetres(); });
    }
    if (column == "bait_depth_m") {
        return si(units::lengthWritten(text, bare), [](auto l) { return l.inMetres(); });
    }
    if (column == "wind_from_deg") {
        return si(units::bearingWritten(text), [](auto b) { return b.inDegrees(); });
    }
    if (column == "wind_speed_m_s") {
        return si(units::speedWritten(text, bare), [](auto v) { return v.inMetresPerSecond(); });
    }
    if (column == "water_temperature_c") {
        return si(units::temperatureWritten(text, bare), [](auto t) { return t.inCelsius(); });
    }
    return std::nullopt;
}

/// What a column can hold.
struct Range {
    std::string_view column;
    double least;
    double most;
};
constexpr std::array ranges{
    Range{"rods", 0, 100},
    Range{"weight_kg", 0, units::heaviestFish.inKilograms()},
    Range{"length_mm", 0, 1000.0 * units::longestFish.inMetres()},
    Range{"bait_depth_m", 0, 500},
    Range{"wind_from_deg", 0, 360},
    Range{"wind_speed_m_s", 0, 60},
    Range{"water_temperature_c", units::coldestWater.inCelsius(), units::warmestWater.inCelsius()}};

/// Makes a log of the rows of one table.
class LogRows {
public:
    LogRows(const units::Clock& clock, ReadLog& read) : clock_(&clock), read_(&read) {}

    void take(const TableRecords& records) {
        const std::string kind = base::lowerCase(records.text("kind"));
        const auto stay = base::wholeNumberFrom(records.text("stay"));
        if (kind != "stay" && kind != "run" && kind != "fish") {
            refuse("unknown_kind", records);
        } else if (!stay || *stay < 1) {
            refuse("no_stay_number", records);
        } else if (kind == "stay") {
            takeStay(*stay, records);
        } else {
            takeRun(*stay, kind == "fish", records);
        }
    }

    /// Runs go to their stays, which may stand anywhere in the file.
    void finish() {
        std::int64_t number = 0;
        for (LooseRun& run : runs_) {
            const auto at = stays_.find(run.stay);
            if (at == stays_.end()) {
                read_->report.refuse("no_such_stay", run.line, run.row);
                continue;
            }
            run.fish.id = logbook::FishId(++number);
            if (run.fish.bait.empty()) {
                run.fish.bait = at->second.bait;
            }
            at->second.runs.push_back(std::move(run.fish));
            ++read_->report.used;
        }
        for (auto& [id, stay] : stays_) {
            std::ranges::stable_sort(stay.runs, {}, &logbook::Fish::time);
            read_->log.push_back(std::move(stay));
        }
        logbook::sortByTime(read_->log);
    }

private:
    void refuse(std::string_view reason, const TableRecords& records) {
        read_->report.refuse(reason, records.line(), records.row());
    }

    /// The amount of a column; one that is none, or cannot be, is told and left out.
    std::optional<double> amount(const TableRecords& records, std::string_view column) {
        const std::string text = records.text(column);
        if (text.empty()) {
            return std::nullopt;
        }
        const auto number = amountIn(records, column);
        const auto range = std::ranges::find(ranges, column, &Range::column);
        if (!number || *number < range->least || *number > range->most) {
            read_->report.dropField(column, records.line(), text);
            return std::nullopt;
        }
        return number;
    }

    void takeStay(std::int64_t number, const TableRecords& records) {
        const auto start = units::momentFrom(records.text("start"), *clock_);
        const auto end = units::momentFrom(records.text("end"), *clock_);
        const auto place = records.place();
        if (!start || !end || *end < *start) {
            refuse("bad_time", records);
            return;
        }
        if (!place) {
            refuse("no_position", records);
            return;
        }
        logbook::Stay stay;
        stay.id = logbook::StayId(number);
        stay.start = *start;
        stay.end = *end;
        stay.place = *place;
        if (const auto rods = amount(records, "rods"); rods && *rods >= 1.0) {
            stay.rods = static_cast<int>(*rods);
        }
        stay.bait = records.text("bait");
        stay.note = records.text("note");
        if (const auto from_deg = amount(records, "wind_from_deg")) {
            stay.conditions.windFrom = units::Bearing::degrees(*from_deg);
        }
        if (const auto speed_m_s = amount(records, "wind_speed_m_s")) {
            stay.conditions.windSpeed = units::Speed::metresPerSecond(*speed_m_s);
        }
        if (const auto water_c = amount(records, "water_temperature_c")) {
            stay.conditions.waterTemperature = units::Temperature::celsius(*water_c);
        }
        if (!stays_.try_emplace(number, std::move(stay)).second) {
            refuse("same_stay_twice", records);
            return;
        }
        read_->lines[logbook::StayId(number)] = records.line();
        ++read_->report.used;
    }

    void takeRun(std::int64_t stay, bool landed, const TableRecords& records) {
        const auto time = units::momentFrom(records.text("time"), *clock_);
        if (!time) {
            refuse("bad_time", records);
            return;
        }
        logbook::Fish fish;
        fish.time = *time;
        fish.landed = landed;
        fish.species = records.text("species");
        fish.bait = records.text("bait");
        fish.note = records.text("note");
        if (const auto weight_kg = amount(records, "weight_kg")) {
            fish.weight = units::Weight::kilograms(*weight_kg);
        }
        if (const auto length_mm = amount(records, "length_mm")) {
            fish.length = units::Length::metres(*length_mm / 1000.0);
        }
        if (const auto bait_m = amount(records, "bait_depth_m")) {
            fish.baitDepth = units::Depth::metres(*bait_m);
        }
        runs_.push_back({stay, std::move(fish), records.line(), std::string(records.row())});
    }

    const units::Clock* clock_;
    ReadLog* read_;
    std::map<std::int64_t, logbook::Stay> stays_;
    std::vector<LooseRun> runs_;
};

} // namespace

base::Result<ReadLog> readLog(const std::filesystem::path& path, const units::Clock& clock,
                              base::Progress& progress) {
    auto records = TableRecords::open(path, {"kind", "stay", "start", "end", "lon", "lat"});
    if (!records) {
        return std::unexpected(records.error());
    }
    progress.begin("reading the log");
    ReadLog read;
    LogRows rows(clock, read);
    while (records->next(read.report)) {
        if (progress.stopAsked()) {
            return std::unexpected(base::cancelled());
        }
        rows.take(*records);
    }
    rows.finish();
    if (read.log.empty()) {
        return base::fail(base::ErrorKind::unusableInput,
                          "it has no usable stay: " + read.report.refusedText(), path.string(),
                          "give one row for each stay with start, end, lon and lat");
    }
    return read;
}

} // namespace readers

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readers/read_log.h"

#include "core/base/number_text.h"
#include "core/readers/log_amounts.h"
#include "core/readers/log_table.h"

#include <algorithm>
#include <cmath>
#include <map>

#include <fmt/format.h>

namespace readers {

namespace {

using logbook::Fish;
using logbook::LogColumn;
using logbook::Stay;

/// A run whose stay is yet to be found.
struct RunOfStay {
    std::optional<std::int64_t> stay; ///< Nothing where the row names none.
    LooseRun loose;
    std::string time;        ///< As written, where it is a time of day on a day not known yet.
    bool isFromBoat = false; ///< Its place stood in the columns of the boat's.
};

/// Makes a log of the rows of one table.
class LogRows {
public:
    LogRows(const LogTable& table, const units::Clock& clock, ReadLog& read)
        : table_(&table), cells_(table, read.report), clock_(&clock), read_(&read) {}

    void take() {
        const std::string kind = base::lowerCase(cells_.text(LogColumn::kind));
        const std::string& number = table_->text(LogColumn::stay);
        const auto stay = base::wholeNumberFrom(number);
        const bool isRun = kind == "run" || kind == "fish";
        const bool isNumbered = stay && *stay >= 1;
        if (!isRun && kind != "stay") {
            refuse("unknown_kind");
        } else if (isRun && (isNumbered || number.empty())) {
            takeRun(number.empty() ? std::nullopt : stay, kind == "fish");
        } else if (!isNumbered) {
            refuse("no_stay_number");
        } else {
            takeStay(*stay);
        }
    }

    /// Runs go to their stays, which may stand anywhere in the file.
    void finish() {
        std::int64_t number = 0;
        for (RunOfStay& run : runs_) {
            Stay* stay = stayOf(run);
            if (stay == nullptr && run.stay) {
                read_->report.refuse("no_such_stay", run.loose.line, run.loose.row);
                continue;
            }
            if (stay == nullptr && !run.loose.run.time) {
                read_->report.refuse("no_stay_number", run.loose.line, run.loose.row);
                continue;
            }
            run.loose.run.id = logbook::FishId(++number);
            ++read_->report.used;
            if (stay == nullptr) {
                read_->loose.push_back(std::move(run.loose));
            } else {
                putInto(*stay, run);
            }
        }
        for (auto& [id, stay] : stays_) {
            std::ranges::stable_sort(stay.runs, {}, &Fish::time);
            read_->log.push_back(std::move(stay));
        }
        logbook::sortByTime(read_->log);
        if (endless_ > 0) {
            read_->report.notes.push_back(
                fmt::format("Stays of which no end is known count in no rate: {}.", endless_));
        }
    }

private:
    void refuse(std::string_view reason) {
        read_->report.refuse(reason, table_->line(), table_->row());
    }

    /// The stay that a run names, or else the one that it was taken in.
    Stay* stayOf(const RunOfStay& run) {
        if (run.stay) {
            const auto at = stays_.find(*run.stay);
            return at == stays_.end() ? nullptr : &at->second;
        }
        const auto& time = run.loose.run.time;
        for (auto& [number, stay] : stays_) {
            if (time && stay.start <= *time && *time <= stay.end) {
                return &stay;
            }
        }
        return nullptr;
    }

    /// A time of day is one of the stay's, which may last beyond midnight.
    void putInto(Stay& stay, RunOfStay& run) const {
        if (const auto time = units::timeOfDayFrom(run.time)) {
            const units::Day day = clock_->dayOf(stay.start);
            units::Moment moment = clock_->at(day, *time);
            const units::Day next(std::chrono::sys_days(day) + std::chrono::days(1));
            if (moment < stay.start && clock_->at(next, *time) <= stay.end) {
                moment = clock_->at(next, *time);
            }
            run.loose.run.time = moment;
        }
        Fish& fish = run.loose.run;
        // The boat's own place once more says nothing of where the bait lay.
        if (run.isFromBoat && fish.baitPlace == stay.place) {
            fish.baitPlace.reset();
        }
        stay.runs.push_back(std::move(fish));
    }

    std::optional<units::Moment> endOf(units::Moment start) {
        auto end = cells_.moment(LogColumn::end, start, *clock_);
        const bool isTimeOnly = end && !table_->moment(LogColumn::end, *clock_);
        if (isTimeOnly && *end < start) {
            const units::Day next(std::chrono::sys_days(clock_->dayOf(start)) +
                                  std::chrono::days(1));
            end = clock_->at(next, *units::timeOfDayFrom(table_->text(LogColumn::end)));
        }
        if (end && *end < start) {
            cells_.tell(LogColumn::end);
            end.reset();
        }
        const auto hours = cells_.amount(LogColumn::hours);
        if (!end && hours) {
            return start + std::chrono::milliseconds(std::llround(*hours * 3.6e6));
        }
        return end;
    }

    void takeStay(std::int64_t number) {
        const auto start = table_->moment(LogColumn::start, *clock_);
        const auto place = table_->place(LogColumn::lon, LogColumn::lat);
        if (!start) {
            refuse("bad_time");
            return;
        }
        if (!place) {
            refuse("no_position");
            return;
        }
        if (stays_.contains(number)) {
            refuse("same_stay_twice");
            return;
        }
        const auto end = endOf(*start);
        endless_ += end ? 0U : 1U;
        Stay& stay = stays_[number];
        stay.id = logbook::StayId(number);
        stay.start = *start;
        stay.end = end.value_or(*start);
        stay.place = *place;
        if (const auto rods = cells_.amount(LogColumn::rods)) {
            stay.rods = static_cast<int>(*rods);
        }
        stay.bait = cells_.text(LogColumn::bait);
        stay.note = cells_.text(LogColumn::note);
        stay.who = cells_.text(LogColumn::who);
        stay.photograph = cells_.text(LogColumn::photograph);
        stay.baitPlace = cells_.place(LogColumn::baitLon, LogColumn::baitLat);
        stay.conditions = conditions();
        stay.others = table_->others();
        cells_.tellIfAny({LogColumn::time, LogColumn::species, LogColumn::weightKg,
                          LogColumn::lengthMm, LogColumn::baitDepthM, LogColumn::hooked,
                          LogColumn::returned, LogColumn::weight, LogColumn::length});
        read_->lines[stay.id] = table_->line();
        ++read_->report.used;
    }

    [[nodiscard]] logbook::Conditions conditions() const {
        logbook::Conditions conditions;
        if (const auto from_deg = cells_.amount(LogColumn::windFromDeg)) {
            conditions.windFrom = units::Bearing::degrees(*from_deg);
        }
        if (const auto speed_m_s = cells_.amount(LogColumn::windSpeedMS)) {
            conditions.windSpeed = units::Speed::metresPerSecond(*speed_m_s);
        }
        if (const auto water_c = cells_.amount(LogColumn::waterTemperatureC)) {
            conditions.waterTemperature = units::Temperature::celsius(*water_c);
        }
        if (const auto level_m = cells_.amount(LogColumn::levelM)) {
            conditions.level = units::WaterLevel::metresOnGauge(*level_m);
        }
        conditions.sky = cells_.text(LogColumn::sky);
        return conditions;
    }

    void takeRun(std::optional<std::int64_t> stay, bool landed) {
        RunOfStay run;
        run.stay = stay;
        run.loose.line = table_->line();
        run.loose.row = std::string(table_->row());
        Fish& fish = run.loose.run;
        const std::string& time = table_->text(LogColumn::time);
        if (stay && units::timeOfDayFrom(time)) {
            run.time = time;
        } else {
            fish.time = cells_.moment(LogColumn::time, std::nullopt, *clock_);
        }
        fish.landed = landed;
        fish.species = cells_.text(LogColumn::species);
        fish.bait = cells_.text(LogColumn::bait);
        fish.note = cells_.text(LogColumn::note);
        fish.who = cells_.text(LogColumn::who);
        fish.hooked = cells_.text(LogColumn::hooked);
        fish.photograph = cells_.text(LogColumn::photograph);
        fish.returned = cells_.yesOrNo(LogColumn::returned);
        fish.weight = cells_.weight();
        fish.length = cells_.length();
        if (const auto bait_m = cells_.amount(LogColumn::baitDepthM)) {
            fish.baitDepth = units::Depth::metres(*bait_m);
        }
        fish.baitPlace = cells_.place(LogColumn::baitLon, LogColumn::baitLat);
        if (!fish.baitPlace) {
            fish.baitPlace = table_->place(LogColumn::lon, LogColumn::lat);
            run.isFromBoat = true;
        }
        fish.others = table_->others();
        runs_.push_back(std::move(run));
    }

    const LogTable* table_;
    LogCells cells_;
    const units::Clock* clock_;
    ReadLog* read_;
    std::map<std::int64_t, Stay> stays_;
    std::vector<RunOfStay> runs_;
    std::size_t endless_ = 0;
};

} // namespace

base::Result<ReadLog> readLog(const std::filesystem::path& path, const units::Clock& clock,
                              base::Progress& progress) {
    progress.begin("reading the log");
    ReadLog read;
    auto table = LogTable::open(path, read.report);
    if (!table) {
        return std::unexpected(table.error());
    }
    constexpr std::size_t often = 1024;
    LogRows rows(*table, clock, read);
    while (table->next(read.report)) {
        if (progress.stopAsked()) {
            return std::unexpected(base::cancelled());
        }
        if (read.report.read % often == 0) {
            progress.tell(table->share());
        }
        rows.take();
    }
    rows.finish();
    if (read.log.empty() && read.loose.empty()) {
        return base::fail(base::ErrorKind::unusableInput,
                          "it has no usable stay: " + read.report.refusedText(), path.string(),
                          "give one row for each stay with start, end, lon and lat");
    }
    return read;
}

} // namespace readers

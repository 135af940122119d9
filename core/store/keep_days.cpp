// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/geopackage.h"
#include "core/store/keep_parts.h"
#include "core/store/kept_values.h"
#include "core/store/reduction_rows.h"
#include "core/water/document/stamp.h"

#include <bit>
#include <set>

#include <fmt/format.h>

namespace store {

namespace {

constexpr std::size_t tellEvery = 20'000; ///< Soundings; about 0.1 s.

/// Changes whenever a sounding of the day does.
std::int64_t stampOf(const soundings::SurveyDay& day) {
    water::Stamp stamp;
    stamp.take(day.soundings.size());
    for (const soundings::Sounding& sounding : day.soundings) {
        stamp.take(sounding.place.lon_deg).take(sounding.place.lat_deg);
        stamp.take(sounding.shown.inMetres()).take(sounding.time.has_value());
        if (sounding.time) {
            stamp.take(sounding.time->time_since_epoch().count());
        }
    }
    return std::bit_cast<std::int64_t>(stamp.value());
}

/// How far the writing or reading of all soundings is.
class Count {
public:
    Count(Connection& connection, base::Progress& progress, std::size_t all)
        : connection_(connection), progress_(progress), all_(all) {}
    void more(std::size_t soundings = 1) {
        const std::size_t before = done_;
        done_ += soundings;
        if (before / tellEvery == done_ / tellEvery) {
            return;
        }
        progress_.tell(static_cast<double>(done_) / static_cast<double>(std::max(all_, done_)));
        if (progress_.stopAsked()) {
            connection_.fail(base::cancelled());
        }
    }

private:
    Connection& connection_;
    base::Progress& progress_;
    std::size_t all_;
    std::size_t done_ = 0;
};

std::size_t soundingCount(const water::Water& water) {
    std::size_t count = 0;
    for (const soundings::SurveyDay& day : water.days) {
        count += day.soundings.size();
    }
    return count;
}

/// Days that the water no longer has go, with all they hold.
void dropOtherDays(Connection& connection, const std::set<std::int64_t>& wanted) {
    std::vector<std::int64_t> gone;
    Statement rows(connection, "SELECT id FROM survey_days");
    rows.ask();
    while (rows.next()) {
        if (!wanted.contains(rows.wholeNumber(0))) {
            gone.push_back(rows.wholeNumber(0));
        }
    }
    Statement day(connection, "DELETE FROM survey_days WHERE id=?");
    Statement soundings(connection, "DELETE FROM soundings WHERE day_id=?");
    for (const std::int64_t id : gone) {
        soundings.run(id);
        day.run(id);
    }
}

/// True where the file holds just these soundings of the day.
bool hasSoundings(Connection& connection, std::int64_t id, std::int64_t stamp) {
    Statement row(connection, "SELECT soundings_stamp FROM survey_days WHERE id=?");
    row.ask(id);
    return row.next() && row.wholeNumber(0) == stamp;
}

void keepSoundings(Connection& connection, const soundings::SurveyDay& day,
                   const reduction::ReducedDay* reduced, Count& count) {
    Statement clear(connection, "DELETE FROM soundings WHERE day_id=?");
    clear.run(day.id.number());
    Statement insert(connection, "INSERT INTO soundings (geom, day_id, time, shown_depth_m, "
                                 "reduced_depth_m, set_aside) VALUES (?,?,?,?,?,?)");
    for (std::size_t i = 0; i < day.soundings.size() && connection.isFine(); ++i) {
        const soundings::Sounding& sounding = day.soundings[i];
        std::optional<KeptTime> time;
        if (sounding.time) {
            time.emplace(*sounding.time);
        }
        const ReductionRow row = reduced != nullptr ? reductionRowOf(*reduced, i) : ReductionRow();
        insert.run(Blob(pointBlobOf(sounding.place)), day.id.number(),
                   time ? std::optional(time->text()) : std::nullopt,
                   kept(connection, "shown_depth_m", sounding.shown.inMetres()), row.depth_m,
                   row.setAside);
        count.more();
    }
}

/// What was reduced of the day, where it was these soundings.
const reduction::ReducedDay* reducedOf(const reduction::ReducedSurvey* reduced,
                                       const water::Water& water, std::size_t position) {
    if (reduced == nullptr || reduced->days.size() != water.days.size()) {
        return nullptr;
    }
    const reduction::ReducedDay& day = reduced->days[position];
    const std::size_t count = water.days[position].soundings.size();
    return day.depth_m.size() == count && day.verdicts.size() == count ? &day : nullptr;
}

void keepDay(Connection& connection, const soundings::SurveyDay& day, std::size_t position,
             std::int64_t stamp) {
    std::optional<double> level_m;
    if (const auto level = day.gauge.constantLevel()) {
        level_m = level->inMetresOnGauge();
    }
    std::optional<double> temperature_c;
    if (day.waterTemperature) {
        temperature_c = day.waterTemperature->inCelsius();
    }
    std::optional<double> offset_m;
    if (day.agreedOffset) {
        offset_m = day.agreedOffset->inMetres();
    }
    Statement row(
        connection,
        "INSERT INTO survey_days (id, position, name, source, draft_m, assumed_sound_speed_m_s, "
        "measures_by_sound, gauge_level_m, water_temperature_c, agreed_offset_m, "
        "agreed_delay_s, sounding_count, soundings_stamp) "
        "VALUES (?,?,?,?,?,?,?,?,?,?,?,?,?) ON CONFLICT (id) DO UPDATE SET "
        "position=excluded.position, "
        "name=excluded.name, source=excluded.source, draft_m=excluded.draft_m, "
        "assumed_sound_speed_m_s=excluded.assumed_sound_speed_m_s, "
        "measures_by_sound=excluded.measures_by_sound, gauge_level_m=excluded.gauge_level_m, "
        "water_temperature_c=excluded.water_temperature_c, "
        "agreed_offset_m=excluded.agreed_offset_m, agreed_delay_s=excluded.agreed_delay_s, "
        "sounding_count=excluded.sounding_count, reduction_stamp=CASE WHEN "
        "soundings_stamp=excluded.soundings_stamp THEN reduction_stamp END, "
        "soundings_stamp=excluded.soundings_stamp");
    row.run(day.id.number(), position, day.name, day.source,
            kept(connection, "draft_m", day.sounder.draft.inMetres()),
            kept(connection, "assumed_sound_speed_m_s",
                 day.sounder.assumedSoundSpeed.inMetresPerSecond()),
            day.sounder.measuresBySound, kept(connection, "gauge_level_m", level_m),
            kept(connection, "water_temperature_c", temperature_c),
            kept(connection, "agreed_offset_m", offset_m),
            kept(connection, "agreed_delay_s", day.agreedDelay_s), day.soundings.size(), stamp);
}

/// Which reduction the rows of the day hold.
void noteReduction(Connection& connection, const soundings::SurveyDay& day,
                   const reduction::ReducedDay* reduced) {
    Statement note(connection, "UPDATE survey_days SET reduction_stamp=? WHERE id=?");
    note.run(reduced != nullptr ? std::optional(reductionStampOf(*reduced)) : std::nullopt,
             day.id.number());
}

void keepSmallTables(Connection& connection, const water::Water& water) {
    connection.execute("DELETE FROM gauge_readings; DELETE FROM passes;"
                       "DELETE FROM verdicts_by_hand");
    Statement reading(connection,
                      "INSERT INTO gauge_readings (day_id, time, level_m) VALUES (?,?,?)");
    Statement pass(connection, "INSERT INTO passes (day_id, first_sounding) VALUES (?,?)");
    Statement verdict(connection, "INSERT INTO verdicts_by_hand (day_id, sounding, is_kept) "
                                  "VALUES (?,?,?)");
    for (const soundings::SurveyDay& day : water.days) {
        for (const soundings::GaugeReading& read : day.gauge.readings()) {
            reading.run(day.id.number(), keptTime(read.time),
                        kept(connection, "level_m", read.level.inMetresOnGauge()));
        }
        for (const std::size_t start : day.passStarts) {
            pass.run(day.id.number(), start);
        }
        for (const std::size_t sounding : day.setAsideByHand) {
            verdict.run(day.id.number(), sounding, false);
        }
        for (const std::size_t sounding : day.keptByHand) {
            verdict.run(day.id.number(), sounding, true);
        }
    }
}

/// Positions among the soundings once some of them are left out. The rows of a day follow each
/// other; where that does not tell which are missing, the positions say nothing any more.
void countAnew(soundings::SurveyDay& day, const std::vector<std::int64_t>& rowsTaken,
               std::size_t expected) {
    const bool isKnown = !rowsTaken.empty() && rowsTaken.back() - rowsTaken.front() + 1 ==
                                                   static_cast<std::int64_t>(expected);
    const auto placeOf = [&](std::size_t position) {
        return std::ranges::lower_bound(rowsTaken,
                                        rowsTaken.front() + static_cast<std::int64_t>(position));
    };
    std::vector<std::size_t> starts;
    for (const std::size_t start : day.passStarts) {
        const auto at = isKnown ? placeOf(start) : rowsTaken.end();
        if (at != rowsTaken.end()) {
            starts.push_back(static_cast<std::size_t>(at - rowsTaken.begin()));
        }
    }
    starts.erase(std::unique(starts.begin(), starts.end()), starts.end());
    day.passStarts.edit() = std::move(starts);
    for (auto* list : {&day.setAsideByHand, &day.keptByHand}) {
        std::vector<std::size_t> positions;
        for (const std::size_t position : *list) {
            const auto at = isKnown ? placeOf(position) : rowsTaken.end();
            if (at != rowsTaken.end() &&
                *at == rowsTaken.front() + static_cast<std::int64_t>(position)) {
                positions.push_back(static_cast<std::size_t>(at - rowsTaken.begin()));
            }
        }
        list->edit() = std::move(positions);
    }
}

void recallSoundings(Connection& connection, soundings::SurveyDay& day, std::size_t expected,
                     Count& count) {
    Statement rows(connection,
                   "SELECT geom, time, shown_depth_m, fid FROM soundings WHERE day_id=? "
                   "ORDER BY fid");
    rows.ask(day.id.number());
    std::vector<soundings::Sounding>& held = day.soundings.edit();
    std::vector<std::int64_t> rowsTaken;
    while ((held.size() <= expected || connection.leavesOutDamaged()) && rows.next()) {
        soundings::Sounding sounding;
        sounding.place = placeAt(connection, rows, 0);
        if (!rows.isEmpty(1)) {
            sounding.time = momentAt(connection, rows, 1);
        }
        sounding.shown = units::Depth::metres(rows.number(2));
        if (connection.isRowWhole()) {
            held.push_back(sounding);
            rowsTaken.push_back(connection.leavesOutDamaged() ? rows.wholeNumber(3) : 0);
        }
        count.more();
    }
    if (connection.isFine() && day.soundings.size() != expected) {
        connection.failDamaged(fmt::format("survey day '{}' holds {} soundings instead of {}",
                                           day.name, day.soundings.size(), expected));
        if (connection.leavesOutDamaged()) {
            countAnew(day, rowsTaken, expected);
        }
    }
}

void recallSmallTables(Connection& connection, soundings::SurveyDay& day) {
    Statement readings(connection,
                       "SELECT time, level_m FROM gauge_readings WHERE day_id=? ORDER BY id");
    std::vector<soundings::GaugeReading> table;
    readings.ask(day.id.number());
    while (readings.next()) {
        takeRow(connection, table,
                {momentAt(connection, readings, 0),
                 units::WaterLevel::metresOnGauge(readings.number(1))});
    }
    if (!table.empty()) {
        day.gauge = soundings::Gauge::table(std::move(table));
    }
    Statement passes(connection, "SELECT first_sounding FROM passes WHERE day_id=? ORDER BY id");
    passes.ask(day.id.number());
    std::vector<std::size_t>& starts = day.passStarts.edit();
    while (passes.next()) {
        takeRow(connection, starts, positionAt(connection, passes, 0));
    }
    Statement verdicts(connection,
                       "SELECT sounding, is_kept FROM verdicts_by_hand WHERE day_id=? ORDER BY id");
    verdicts.ask(day.id.number());
    std::vector<std::size_t>& keptByHand = day.keptByHand.edit();
    std::vector<std::size_t>& setAsideByHand = day.setAsideByHand.edit();
    while (verdicts.next()) {
        auto& positions = verdicts.wholeNumber(1) != 0 ? keptByHand : setAsideByHand;
        takeRow(connection, positions, positionAt(connection, verdicts, 0));
    }
}

void checkPositions(Connection& connection, soundings::SurveyDay& day) {
    for (auto* positions : {&day.passStarts, &day.setAsideByHand, &day.keptByHand}) {
        for (const std::size_t position : *positions) {
            if (position >= day.soundings.size()) {
                connection.failDamaged(fmt::format("survey day '{}' speaks of sounding {} of {}",
                                                   day.name, position + 1, day.soundings.size()));
            }
        }
        if (!connection.isRowWhole() && connection.leavesOutDamaged()) {
            std::erase_if(positions->edit(),
                          [&](std::size_t position) { return position >= day.soundings.size(); });
        }
    }
}

} // namespace

void keepDays(Connection& connection, const water::Water& water,
              const reduction::ReducedSurvey* reduced, base::Progress& progress) {
    std::set<std::int64_t> wanted;
    for (const soundings::SurveyDay& day : water.days) {
        if (!day.id.isGiven() || !wanted.insert(day.id.number()).second) {
            connection.fail({base::ErrorKind::wrongUse,
                             "survey day '" + day.name + "' has no number of its own",
                             connection.path().string(), "remove it and read its file again"});
        }
    }
    dropOtherDays(connection, wanted);
    Count count(connection, progress, soundingCount(water));
    LonLatBox box;
    for (std::size_t position = 0; position < water.days.size(); ++position) {
        const soundings::SurveyDay& day = water.days[position];
        const std::int64_t stamp = stampOf(day);
        if (hasSoundings(connection, day.id.number(), stamp)) {
            count.more(day.soundings.size());
            keepDay(connection, day, position, stamp);
        } else {
            const reduction::ReducedDay* found = reducedOf(reduced, water, position);
            keepDay(connection, day, position, stamp); // what its soundings point to
            keepSoundings(connection, day, found, count);
            noteReduction(connection, day, found);
        }
        for (const soundings::Sounding& sounding : day.soundings) {
            box.take(sounding.place);
        }
    }
    keepSmallTables(connection, water);
    setExtent(connection, "soundings", box);
    for (const char* table : {"survey_days", "gauge_readings", "passes", "verdicts_by_hand"}) {
        setChanged(connection, table);
    }
}

void recallDays(Connection& connection, water::Water& water, base::Progress& progress) {
    Statement sum(connection, "SELECT coalesce(sum(sounding_count), 0) FROM survey_days");
    sum.ask();
    Count count(connection, progress, sum.next() ? positionAt(connection, sum, 0) : 0);
    sum.reset();
    Statement rows(connection,
                   "SELECT id, name, source, draft_m, assumed_sound_speed_m_s, measures_by_sound, "
                   "gauge_level_m, water_temperature_c, sounding_count, agreed_offset_m, "
                   "agreed_delay_s "
                   "FROM survey_days "
                   "ORDER BY position");
    rows.ask();
    while (rows.next()) {
        soundings::SurveyDay day;
        day.id = soundings::SurveyDayId(rows.wholeNumber(0));
        day.name = rows.text(1);
        day.source = rows.text(2);
        day.sounder.draft = units::Depth::metres(rows.number(3));
        day.sounder.assumedSoundSpeed = units::Speed::metresPerSecond(rows.number(4));
        day.sounder.measuresBySound = rows.wholeNumber(5) != 0;
        if (const auto level_m = rows.numberIfAny(6)) {
            day.gauge = soundings::Gauge::constant(units::WaterLevel::metresOnGauge(*level_m));
        }
        if (const auto temperature_c = rows.numberIfAny(7)) {
            day.waterTemperature = units::Temperature::celsius(*temperature_c);
        }
        if (const auto offset_m = rows.numberIfAny(9)) {
            day.agreedOffset = units::Length::metres(*offset_m);
        }
        day.agreedDelay_s = rows.numberIfAny(10);
        static_cast<void>(connection.isRowWhole()); // its soundings are worth more than its facts
        recallSmallTables(connection, day);
        recallSoundings(connection, day, positionAt(connection, rows, 8), count);
        checkPositions(connection, day);
        water.days.push_back(std::move(day));
    }
}

} // namespace store

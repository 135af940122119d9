// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/wording/words.h"
#include "core/logbook/trip.h"
#include "core/rates/hour_rates.h"
#include "core/rates/rate.h"

#include <QString>
#include <QStringList>

#include <vector>

// What the steps of looking back show, worked out without any widget.
namespace days::looking_back {

/// "33 trips, 134 stays, 95 fish".
[[nodiscard]] QString logLine(const logbook::Log& log, const units::Clock& clock);
/// "1 trip", "3 trips".
[[nodiscard]] QString counted(std::size_t count, const QString& one, const QString& many);

/// A row of the list of stays and what it stands for.
struct LogRow {
    QStringList cells; ///< When and what, rods and bait or species, weight.
    logbook::StayId stay;
    logbook::FishId run; ///< Not given in the row of the stay itself.
};
/// Latest first; each stay is followed by its runs.
[[nodiscard]] std::vector<LogRow> logRows(const logbook::Log& log, const units::Clock& clock,
                                          const wording::Words& words);
/// "Sat 3 Oct 2026, 08:10 to 10:00".
[[nodiscard]] QString stayTitle(const logbook::Stay& stay, const units::Clock& clock);

/// Group, rod-hours, stays, blanks, runs, fish, best, shrunk rate.
[[nodiscard]] std::vector<QStringList> producedRows(const rates::RateTable& table,
                                                    const wording::Words& words);
/// "1.4 (0.7 to 2.6)"; empty where there was no effort.
[[nodiscard]] QString rateWords(const std::optional<rates::Rate>& rate);
/// Trips, stays, blanks, fish by month, oldest first.
[[nodiscard]] std::vector<QStringList> seasonRows(const logbook::Log& log,
                                                  const units::Clock& clock);
/// Every species in the log, by name.
[[nodiscard]] QStringList speciesIn(const logbook::Log& log);

/// A blank with the conditions of the plan, after the last stay of the plan's day.
[[nodiscard]] logbook::Stay newStay(const logbook::Log& log, const units::Clock& clock,
                                    units::Day day, std::chrono::seconds start);

/// "best between 16:00 and 20:00, by 7 trips"; says where all hours are alike, or too little was
/// fished.
[[nodiscard]] QString bestHoursWords(const rates::HourRates& hours);

} // namespace days::looking_back

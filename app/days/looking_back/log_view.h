// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/wording/words.h"
#include "core/logbook/log_sum.h"
#include "core/rates/hour_rates.h"
#include "core/rates/rate.h"

#include <QString>
#include <QStringList>

#include <optional>
#include <vector>

// What the steps of looking back show, worked out without any widget.
namespace days::looking_back {

/// "33 trips, 134 stays, 95 fish".
[[nodiscard]] QString logLine(const logbook::LogSum& sum);

/// "1.4 (0.7 to 2.6)"; empty where there was no effort.
[[nodiscard]] QString rateWords(const std::optional<rates::Rate>& rate);
/// Trips, stays, blanks, fish by month, oldest first.
[[nodiscard]] std::vector<QStringList> seasonRows(const logbook::LogSum& sum);
/// Every species in the log, by name.
[[nodiscard]] QStringList speciesIn(const logbook::LogSum& sum);

/// "best between 16:00 and 20:00, by 7 trips"; says where all hours are alike, or too little was
/// fished.
[[nodiscard]] QString bestHoursWords(const rates::HourRates& hours);

} // namespace days::looking_back

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/wording/words.h"
#include "core/logbook/kept_log.h"
#include "core/logbook/log_sum.h"
#include "core/rates/hour_rates.h"
#include "core/rates/rate.h"
#include "core/water/document/water.h"

#include <QString>
#include <QStringList>

#include <optional>
#include <vector>

// What the steps of looking back show, worked out without any widget.
namespace days::looking_back {

/// "33 trips, 134 stays, 95 fish".
[[nodiscard]] QString logLine(const logbook::LogSum& sum);
/// "1 trip", "3 trips".
[[nodiscard]] QString counted(std::size_t count, const QString& one, const QString& many);

/// A row of the list of stays and what it stands for.
struct LogRow {
    QStringList cells; ///< When and what, rods and bait or species, weight.
    logbook::StayId stay;
    logbook::FishId run; ///< Not given in the row of the stay itself.
};
/// The rows of a log, latest first; each stay is followed by its runs. A row is written when it is
/// asked for.
class LogRows {
public:
    LogRows() = default;
    LogRows(logbook::KeptLog log, units::Clock clock, const wording::Words& words);

    [[nodiscard]] std::size_t size() const { return size_; }
    /// \param row below size().
    [[nodiscard]] LogRow operator[](std::size_t row) const;
    /// Where a run stands, or a stay where `run` is not given; nothing where there is none.
    [[nodiscard]] std::optional<std::size_t> rowOf(logbook::StayId stay, logbook::FishId run) const;

private:
    logbook::KeptLog log_;
    units::Clock clock_;
    wording::Words words_;
    std::vector<std::size_t> before_; ///< Rows above those of each chunk, from the last one on.
    std::size_t size_ = 0;
};
/// Group, rod-hours, stays, blanks, runs, fish, best, shrunk rate.
[[nodiscard]] std::vector<QStringList> producedRows(const rates::RateTable& table,
                                                    const wording::Words& words);
/// "1.4 (0.7 to 2.6)"; empty where there was no effort.
[[nodiscard]] QString rateWords(const std::optional<rates::Rate>& rate);
/// Trips, stays, blanks, fish by month, oldest first.
[[nodiscard]] std::vector<QStringList> seasonRows(const logbook::LogSum& sum);
/// Every species in the log, by name.
[[nodiscard]] QStringList speciesIn(const logbook::LogSum& sum);

/// A blank of today, to be put right: after the last stay of the day, with its rods (as far as the
/// house allows them) and bait; where it is the first, the two hours just gone by. What nobody has
/// said is not known.
[[nodiscard]] logbook::Stay newStay(const water::Water& water, units::Moment now);

/// "best between 16:00 and 20:00, by 7 trips"; says where all hours are alike, or too little was
/// fished.
[[nodiscard]] QString bestHoursWords(const rates::HourRates& hours);

} // namespace days::looking_back

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/outputs/write_rates.h"

#include "core/base/number_text.h"
#include "core/base/whole_file.h"
#include "core/outputs/table_field.h"

namespace outputs {

namespace {

constexpr int rateDecimals = 4;

std::string figures(const std::optional<rates::Rate>& rate) {
    if (!rate) {
        return ",,";
    }
    return base::fixedText(rate->per10RodHours, rateDecimals) + ',' +
           base::fixedText(rate->low, rateDecimals) + ',' +
           base::fixedText(rate->high, rateDecimals);
}

/// The steadied rate stands under both its names.
std::string rowText(const rates::RateRow& row) {
    const std::string steadied =
        row.shrunk ? base::fixedText(row.shrunk->per10RodHours, rateDecimals) : std::string();
    return field(row.name) + ',' + base::fixedText(row.rodHours, 3) + ',' +
           std::to_string(row.stays) + ',' + std::to_string(row.blanks) + ',' +
           std::to_string(row.runs) + ',' + std::to_string(row.fish) + ',' +
           (row.best ? base::fixedText(row.best->inKilograms(), 3) : std::string()) + ',' +
           figures(row.rate) + ',' + steadied + ',' +
           base::fixedText(row.shareOfEffort, rateDecimals) + ',' + steadied + '\n';
}

} // namespace

base::Result<void> writeRatesTable(const std::filesystem::path& path,
                                   const rates::RateTable& table) {
    std::string text = "name,rod_hours,stays,blanks,runs,fish,best_kg,rate_per_10_rod_hours,rate_"
                       "low,rate_high,shrunk_rate,share_of_effort,steadied_rate\n";
    for (const rates::RateRow& row : table.rows) {
        text += rowText(row);
    }
    text += rowText(table.overall);
    return base::writeWholeFile(path, text);
}

} // namespace outputs

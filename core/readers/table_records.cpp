// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readers/table_records.h"

#include "core/base/number_text.h"
#include "core/readers/table_guess.h"
#include "core/readers/table_text.h"

#include <fmt/format.h>

namespace readers {

base::Result<TableRecords> TableRecords::open(const std::filesystem::path& path,
                                              const std::vector<std::string>& needed) {
    auto lines = LineReader::open(path);
    if (!lines) {
        return std::unexpected(lines.error());
    }
    TableRecords records(std::move(*lines));
    records.where_ = path.filename().string();
    std::string_view line;
    while (records.lines_.next(line) && isRemark(line)) {
    }
    std::vector<std::string_view> names;
    splitRow(line, ',', names);
    records.cellCount_ = names.size();
    for (std::size_t i = 0; i < names.size(); ++i) {
        records.columns_.try_emplace(base::lowerCase(names[i]), i);
    }
    for (const std::string& name : needed) {
        if (!records.columns_.contains(name)) {
            return base::fail(base::ErrorKind::unusableInput,
                              fmt::format("it has no column '{}'", name), path.string(),
                              "its first line must name the columns, with commas between");
        }
    }
    return records;
}

bool TableRecords::next(ReadingReport& report) {
    std::string_view line;
    while (lines_.next(line)) {
        if (base::trimmed(line).empty()) {
            continue;
        }
        ++report.read;
        row_ = line;
        splitRow(row_, ',', cells_);
        if (cells_.size() == cellCount_) {
            return true;
        }
        report.refuse("wrong_columns", lines_.lineNumber(), row_);
    }
    return false;
}

std::string TableRecords::text(std::string_view column) const {
    const auto at = columns_.find(column);
    if (at == columns_.end() || at->second >= cells_.size()) {
        return {};
    }
    const std::string_view cell = cells_[at->second];
    std::string text;
    text.reserve(cell.size());
    for (std::size_t i = 0; i < cell.size(); ++i) {
        text += cell[i];
        const bool isDoubled = cell[i] == '"' && i + 1 < cell.size() && cell[i + 1] == '"';
        i += isDoubled ? 1U : 0U;
    }
    return text;
}

std::optional<double> TableRecords::number(std::string_view column) const {
    return base::numberFrom(text(column));
}

std::optional<geo::LonLat> TableRecords::place() const {
    const auto lon_deg = number("lon");
    const auto lat_deg = number("lat");
    if (!lon_deg || !lat_deg || !geo::isOnEarth({*lon_deg, *lat_deg})) {
        return std::nullopt;
    }
    return geo::LonLat{*lon_deg, *lat_deg};
}

} // namespace readers

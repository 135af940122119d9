// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readers/log_table.h"

#include "core/base/harmless_text.h"
#include "core/base/number_text.h"
#include "core/readers/decoded_text.h"
#include "core/readers/whole_text.h"

#include <algorithm>
#include <set>

#include <fmt/format.h>
#include <fmt/ranges.h>

namespace readers {

namespace {

using logbook::LogColumn;
using Cells = std::vector<std::string>;

constexpr std::size_t rowsToTheHeader = 20;
/// A row that names so many columns of a log is its header.
constexpr std::size_t namesOfAHeader = 3;

std::size_t columnsNamedIn(const Cells& cells) {
    std::set<LogColumn> named;
    for (const std::string& cell : cells) {
        if (const auto column = logbook::logColumnNamed(base::lowerCase(cell))) {
            named.insert(*column);
        }
    }
    return named.size();
}

bool isBlank(const Cells& cells) {
    return std::ranges::all_of(cells, &std::string::empty);
}

/// The date in front of a date and time.
std::string_view dateIn(std::string_view text) {
    return text.substr(0, text.find_first_of(" T,"));
}

/// How many dates each order reads.
struct DateVotes {
    std::array<std::size_t, 3> fits{};
    std::size_t open = 0; ///< Dates that read both ways, and differently.
    std::string firstOpen;

    void take(const std::string& text) {
        const std::string_view date = dateIn(text);
        std::array<std::optional<units::Day>, 3> days;
        for (std::size_t i = 0; i < days.size(); ++i) {
            days[i] = dateFrom(date, static_cast<DateOrder>(i));
            fits[i] += days[i] ? 1U : 0U;
        }
        if (days[1] && days[2] && days[1] != days[2]) {
            open += 1;
            firstOpen = firstOpen.empty() ? std::string(date) : firstOpen;
        }
    }
    [[nodiscard]] DateOrder order() const {
        return static_cast<DateOrder>(std::ranges::max_element(fits) - fits.begin());
    }
    /// Nothing tells whether day or month comes first.
    [[nodiscard]] bool isOpen() const {
        return order() != DateOrder::yearFirst && open > 0 && fits[1] == fits[2];
    }
};

/// On one line, as it stands in a list of names, whatever the cell of the header holds.
std::string columnName(std::string_view cell) {
    std::string name = base::harmless(logbook::unguarded(cell));
    std::ranges::replace_if(
        name, [](char c) { return c == '\n' || c == '\r' || c == '\t'; }, ' ');
    return name;
}

} // namespace

base::Result<LogTable> LogTable::open(const std::filesystem::path& path, ReadingReport& report) {
    auto bytes = wholeText(path);
    if (!bytes) {
        return std::unexpected(bytes.error());
    }
    LogTable table;
    DecodedText decoded = decodedText(std::move(*bytes));
    if (decoded.encoding == TextEncoding::windows1252) {
        report.notes.emplace_back("The file is not in UTF-8: it was read as Windows-1252.");
    }
    table.text_ = std::make_unique<const std::string>(std::move(decoded.text));
    table.separator_ = table.findSeparator();
    table.rows_.emplace(*table.text_, table.separator_);
    Cells best;
    for (std::size_t row = 0; row < rowsToTheHeader && table.rows_->next(table.cells_); ++row) {
        if (columnsNamedIn(table.cells_) > columnsNamedIn(best)) {
            best = table.cells_;
        }
        if (columnsNamedIn(best) >= namesOfAHeader) {
            break;
        }
    }
    table.layHeader(best);
    if (auto checked = table.checkHeader(path.string()); !checked) {
        return std::unexpected(checked.error());
    }
    table.lookAhead(report);
    return table;
}

char LogTable::findSeparator() const {
    char best = ',';
    std::size_t most = 0;
    for (const char separator : {',', ';', '\t', '|'}) {
        QuotedRows rows(*text_, separator);
        Cells cells;
        for (std::size_t row = 0; row < rowsToTheHeader && rows.next(cells); ++row) {
            const std::size_t named = columnsNamedIn(cells);
            if (named > most) {
                most = named;
                best = separator;
            }
        }
    }
    return best;
}

void LogTable::layHeader(const Cells& names) {
    at_ = {};
    otherNames_.assign(names.size(), {});
    cellCount_ = names.size();
    for (std::size_t i = 0; i < names.size(); ++i) {
        const auto column = logbook::logColumnNamed(base::lowerCase(names[i]));
        auto* const at = column ? &at_[static_cast<std::size_t>(*column)] : nullptr;
        if (at != nullptr && !*at) {
            *at = i;
            continue;
        }
        // A name that stands twice, or none at all, still has to be told from the others.
        std::string name =
            names[i].empty() ? fmt::format("column {}", i + 1) : columnName(names[i]);
        const std::string asWritten = name;
        for (int count = 2; std::ranges::find(otherNames_, name) != otherNames_.end() ||
                            (at != nullptr && name == asWritten);
             ++count) {
            name = fmt::format("{} ({})", asWritten, count);
        }
        otherNames_[i] = std::move(name);
    }
}

base::Result<void> LogTable::checkHeader(const std::string& where) const {
    const auto has = [this](Column column) {
        return at_[static_cast<std::size_t>(column)].has_value();
    };
    for (const Column needed :
         {Column::kind, Column::stay, Column::start, Column::end, Column::lon, Column::lat}) {
        if (!has(needed) && !(needed == Column::end && has(Column::hours))) {
            return base::fail(base::ErrorKind::unusableInput,
                              fmt::format("it has no column '{}'", nameOf(needed)), where,
                              "its first line must name the columns");
        }
    }
    return {};
}

/// Decimal mark and order of dates are those of the whole table: one cell alone may read both ways.
void LogTable::lookAhead(ReadingReport& report) {
    QuotedRows rest = *rows_;
    DateVotes votes;
    bool isMarkKnown = false;
    while (rest.next(cells_)) {
        for (const Column column : {Column::lon, Column::lat}) {
            const std::string& cell = text(column);
            if (!isMarkKnown && base::numberFrom(cell, ',') &&
                cell.find(',') != std::string::npos) {
                decimalMark_ = ',';
            }
            isMarkKnown = isMarkKnown || cell.find_first_of(".,") != std::string::npos;
        }
        for (const Column column : {Column::start, Column::end, Column::time}) {
            votes.take(text(column));
        }
    }
    if (!isMarkKnown && separator_ != ',') {
        decimalMark_ = ',';
    }
    cells_.clear();
    order_ = votes.order();
    if (votes.isOpen()) {
        report.notes.push_back(fmt::format(
            "Dates like {} were read with the day first: nothing in the file says otherwise.",
            votes.firstOpen));
    }
    Cells names = otherNames_;
    std::erase(names, std::string());
    if (!names.empty()) {
        report.notes.push_back(fmt::format(
            "Columns that are none of a log's are kept as they are: {}.", fmt::join(names, ", ")));
    }
}

bool LogTable::takeHeaderAgain(ReadingReport& report) {
    const std::size_t named = columnsNamedIn(cells_);
    const auto said = static_cast<std::size_t>(
        std::ranges::count_if(cells_, [](const std::string& cell) { return !cell.empty(); }));
    if (named < namesOfAHeader || 2 * named <= said) {
        return false;
    }
    layHeader(cells_);
    if (!wasAgain_) {
        report.notes.push_back(
            fmt::format("Line {} is a header once more: what follows is read by it.", line()));
    }
    wasAgain_ = true;
    return true;
}

bool LogTable::next(ReadingReport& report) {
    while (rows_->next(cells_)) {
        if (isBlank(cells_) || takeHeaderAgain(report)) {
            continue;
        }
        ++report.read;
        const bool isTooLong =
            cells_.size() > cellCount_ &&
            !std::all_of(cells_.begin() + static_cast<std::ptrdiff_t>(cellCount_), cells_.end(),
                         [](const std::string& cell) { return cell.empty(); });
        if (isTooLong) {
            report.refuse("wrong_columns", line(), row());
            continue;
        }
        if (cells_.size() < cellCount_ && !wasShort_) {
            wasShort_ = true;
            report.notes.push_back(fmt::format(
                "Rows from line {} on are shorter than the header: what they lack is not known.",
                line()));
        }
        cells_.resize(cellCount_);
        return true;
    }
    return false;
}

const std::string& LogTable::text(Column column) const {
    static const std::string none;
    const auto& at = at_[static_cast<std::size_t>(column)];
    return at && *at < cells_.size() ? cells_[*at] : none;
}

std::optional<double> LogTable::numberIn(const std::string& text) const {
    if (const auto number = base::numberFrom(text, decimalMark_)) {
        return number;
    }
    // Three digits behind a point may be thousands where the comma is the decimal mark.
    const std::size_t point = text.find('.');
    constexpr std::size_t thousands = 4;
    const bool isOpen = point == std::string::npos || text.size() - point == thousands;
    return isOpen ? std::nullopt : base::numberFrom(text);
}

std::optional<double> LogTable::number(Column column) const {
    return numberIn(text(column));
}

std::optional<geo::LonLat> LogTable::place(Column lon, Column lat) const {
    const auto degrees = [this](Column column) {
        const std::string& cell = text(column);
        const auto number = numberIn(cell);
        return number || cell.empty() ? number : angleFrom(cell, decimalMark_);
    };
    const auto lon_deg = degrees(lon);
    const auto lat_deg = degrees(lat);
    if (!lon_deg || !lat_deg || !geo::isOnEarth({*lon_deg, *lat_deg})) {
        return std::nullopt;
    }
    return geo::LonLat{*lon_deg, *lat_deg};
}

std::optional<units::Moment> LogTable::moment(Column column, const units::Clock& clock) const {
    const std::string& cell = text(column);
    if (const auto iso = dateAndTimeFrom(cell, DateOrder::yearFirst, clock)) {
        return iso;
    }
    return order_ == DateOrder::yearFirst ? std::nullopt : dateAndTimeFrom(cell, order_, clock);
}

std::vector<logbook::OtherField> LogTable::others() const {
    std::vector<logbook::OtherField> fields;
    for (std::size_t i = 0; i < otherNames_.size() && i < cells_.size(); ++i) {
        if (!otherNames_[i].empty() && !cells_[i].empty()) {
            fields.push_back({otherNames_[i], base::harmless(logbook::unguarded(cells_[i]))});
        }
    }
    std::ranges::sort(fields, {}, &logbook::OtherField::column);
    return fields;
}

} // namespace readers

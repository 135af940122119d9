// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readers/table_guess.h"

#include "core/base/number_text.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <functional>
#include <map>

#include <fmt/format.h>

namespace readers {

namespace {

using Cells = std::vector<std::string_view>;

constexpr std::size_t shownRows = 20;

/// The separator that cuts most of the rows into the same number of cells, more than one.
char guessedSeparator(const std::vector<HeadRow>& head) {
    for (const char candidate : {'\t', ';', '|', ',', ' '}) {
        std::map<std::size_t, std::size_t> rowsByCells;
        Cells cells;
        for (const HeadRow& row : head) {
            splitRow(row.text, candidate, cells);
            ++rowsByCells[cells.size()];
        }
        const auto most = std::ranges::max_element(rowsByCells, {},
                                                   [](const auto& entry) { return entry.second; });
        if (most->first > 1 && most->second * 10 >= head.size() * 7) {
            return candidate;
        }
    }
    return ',';
}

/// A comma where numbers hold one and none holds a point.
char guessedDecimalMark(const std::vector<Cells>& rows, char separator) {
    if (separator == ',') {
        return '.';
    }
    std::size_t commas = 0;
    std::size_t points = 0;
    for (const Cells& row : rows) {
        for (const std::string_view cell : row) {
            points += base::numberFrom(cell, '.') && cell.find('.') != std::string_view::npos;
            commas += base::numberFrom(cell, ',') && cell.find(',') != std::string_view::npos;
        }
    }
    return commas > points ? ',' : '.';
}

std::size_t numbersIn(const Cells& row, char decimalMark) {
    return static_cast<std::size_t>(std::ranges::count_if(
        row, [&](std::string_view cell) { return angleFrom(cell, decimalMark).has_value(); }));
}

/// "Depth (ft)" as "depth", "ft".
std::vector<std::string> wordsOf(std::string_view name) {
    std::vector<std::string> words(1);
    for (const char c : base::lowerCase(name)) {
        const bool isLetter = (c >= 'a' && c <= 'z') || static_cast<unsigned char>(c) >= 0x80U;
        if (isLetter) {
            words.back().push_back(c);
        } else if (!words.back().empty()) {
            words.emplace_back();
        }
    }
    return words;
}

struct RoleWords {
    ColumnRole role;
    std::vector<std::string> words; ///< Best first.
};

const std::vector<RoleWords>& roleWords() {
    static const std::vector<RoleWords> words{
        {ColumnRole::x, {"longitude", "lon", "long", "lng", "easting", "east", "x", "e"}},
        {ColumnRole::y, {"latitude", "lat", "northing", "north", "y", "n"}},
        {ColumnRole::depth, {"depth", "tiefe", "profondeur", "sounding", "z", "d"}},
        {ColumnRole::time, {"datetime", "timestamp", "time", "utc", "zeit"}},
        {ColumnRole::date, {"date", "datum", "day"}},
    };
    return words;
}

void guessRolesByName(TablePreview& preview) {
    for (const RoleWords& wanted : roleWords()) {
        for (const std::string& word : wanted.words) {
            for (std::size_t c = 0; c < preview.columns.size(); ++c) {
                const auto words = wordsOf(preview.columns[c]);
                if (!preview.columnOf(wanted.role) && preview.roles[c] == ColumnRole::none &&
                    std::ranges::find(words, word) != words.end()) {
                    preview.roles[c] = wanted.role;
                }
            }
        }
    }
}

/// Cells of one column.
Cells columnCells(const std::vector<Cells>& rows, std::size_t column) {
    Cells cells;
    for (const Cells& row : rows) {
        if (column < row.size() && !row[column].empty()) {
            cells.push_back(row[column]);
        }
    }
    return cells;
}

bool isMostly(const Cells& cells, const std::function<bool(std::string_view)>& test) {
    const auto count = std::ranges::count_if(cells, test);
    return !cells.empty() && static_cast<std::size_t>(count) * 10 >= cells.size() * 8;
}

/// Without a header: times look like times, coordinates have four or more decimals.
void guessRolesByValue(TablePreview& preview, const std::vector<Cells>& rows) {
    const char mark = preview.decimalMark;
    std::vector<std::size_t> numbers;
    std::vector<std::size_t> fine;
    for (std::size_t c = 0; c < preview.columns.size(); ++c) {
        const Cells cells = columnCells(rows, c);
        const auto isTime = [](std::string_view t) {
            return t.find(':') != std::string_view::npos &&
                   (units::timeOfDayFrom(t) || units::momentFrom(t, units::Clock()));
        };
        const auto isFine = [mark](std::string_view t) {
            const std::size_t point = t.find(mark);
            return angleFrom(t, mark) &&
                   ((point != std::string_view::npos && t.size() > point + 4) ||
                    !base::numberFrom(t, mark));
        };
        if (isMostly(cells, isTime) && !preview.columnOf(ColumnRole::time)) {
            preview.roles[c] = ColumnRole::time;
        } else if (dateOrderOf(cells) && !preview.columnOf(ColumnRole::date)) {
            preview.roles[c] = ColumnRole::date;
        } else if (isMostly(cells, [mark](auto t) { return angleFrom(t, mark).has_value(); })) {
            numbers.push_back(c);
            if (isMostly(cells, isFine)) {
                fine.push_back(c);
            }
        }
    }
    const std::vector<std::size_t>& places = fine.size() >= 2 ? fine : numbers;
    if (places.size() >= 2) {
        preview.roles[places[0]] = ColumnRole::x;
        preview.roles[places[1]] = ColumnRole::y;
    }
    for (const std::size_t c : numbers) {
        if (preview.roles[c] == ColumnRole::none) {
            preview.roles[c] = ColumnRole::depth;
            return;
        }
    }
}

/// The column that the user names by its header or by its number from 1.
base::Result<std::size_t> chosenColumn(const TablePreview& preview, const std::string& wanted,
                                       const std::string& where) {
    for (std::size_t c = 0; c < preview.columns.size(); ++c) {
        if (base::lowerCase(preview.columns[c]) == base::lowerCase(base::trimmed(wanted))) {
            return c;
        }
    }
    const auto number = base::wholeNumberFrom(wanted);
    if (number && *number >= 1 && *number <= static_cast<std::int64_t>(preview.columns.size())) {
        return static_cast<std::size_t>(*number - 1);
    }
    return base::fail(base::ErrorKind::wrongUse, fmt::format("there is no column '{}'", wanted),
                      where, "choose one of: " + preview.columnList());
}

base::Result<void> takeChosenColumns(TablePreview& preview, const ColumnChoice& choice,
                                     const std::string& where) {
    const std::array<std::pair<ColumnRole, const std::string*>, 4> wishes{
        {{ColumnRole::x, &choice.x},
         {ColumnRole::y, &choice.y},
         {ColumnRole::depth, &choice.depth},
         {ColumnRole::time, &choice.time}}};
    for (const auto& [role, name] : wishes) {
        if (name->empty()) {
            continue;
        }
        const auto column = chosenColumn(preview, *name, where);
        if (!column) {
            return std::unexpected(column.error());
        }
        std::ranges::replace(preview.roles, role, ColumnRole::none);
        preview.roles[*column] = role;
        if (role == ColumnRole::time) {
            std::ranges::replace(preview.roles, ColumnRole::date, ColumnRole::none);
        }
    }
    return {};
}

void findUnit(TablePreview& preview, const SoundingFileSettings& settings) {
    const auto depth = preview.columnOf(ColumnRole::depth);
    if (depth && preview.hasHeader) {
        for (const std::string& word : wordsOf(preview.columns[*depth])) {
            if (word == "ft" || word == "feet" || word == "foot") {
                preview.unit = DepthUnit::feet;
            } else if (word == "fathom" || word == "fathoms" || word == "fm") {
                preview.unit = DepthUnit::fathoms;
            } else if (word != "m" && word != "metres" && word != "meters") {
                continue;
            }
            preview.isUnitTold = true;
        }
    }
    preview.isUnitTold = preview.isUnitTold || settings.unit.has_value();
    preview.unit = settings.unit.value_or(preview.unit);
}

void findTimes(TablePreview& preview, const std::vector<Cells>& rows) {
    const auto time = preview.columnOf(ColumnRole::time);
    auto date = preview.columnOf(ColumnRole::date);
    if (!time && date) { // A column called date may hold the time as well.
        preview.roles[*date] = ColumnRole::time;
        date.reset();
    }
    const auto column = preview.columnOf(ColumnRole::time);
    if (!column) {
        return;
    }
    if (date) {
        const auto order = dateOrderOf(columnCells(rows, *date));
        preview.dateOrder = order.value_or(DateOrder::yearFirst);
        preview.hasTimes = order.has_value();
        return;
    }
    const Cells cells = columnCells(rows, *column);
    for (const DateOrder order :
         {DateOrder::yearFirst, DateOrder::dayFirst, DateOrder::monthFirst}) {
        if (!preview.hasTimes && isMostly(cells, [order](std::string_view text) {
                return dateAndTimeFrom(text, order, units::Clock()).has_value();
            })) {
            preview.dateOrder = order;
            preview.hasTimes = true;
        }
    }
}

void findDegrees(TablePreview& preview, const std::vector<Cells>& rows) {
    for (const ColumnRole role : {ColumnRole::x, ColumnRole::y}) {
        if (const auto column = preview.columnOf(role)) {
            const Cells cells = columnCells(rows, *column);
            if (isMostly(cells, [&](std::string_view text) {
                    return std::fabs(angleFrom(text, preview.decimalMark).value_or(0.0)) > 180.0;
                })) {
                preview.inDegrees = false;
            }
        }
    }
}

} // namespace

bool isRemark(std::string_view row) {
    row = base::trimmed(row);
    return row.empty() || row[0] == '#' || row[0] == '%' || row.starts_with("//");
}

base::Result<TablePreview> guessTable(const std::vector<HeadRow>& head,
                                      const SoundingFileSettings& settings,
                                      const std::string& where) {
    TablePreview preview;
    preview.separator = settings.separator.value_or(guessedSeparator(head));
    std::vector<Cells> rows(head.size());
    for (std::size_t i = 0; i < head.size(); ++i) {
        splitRow(head[i].text, preview.separator, rows[i]);
    }
    preview.decimalMark =
        settings.decimalMark.value_or(guessedDecimalMark(rows, preview.separator));
    const bool firstIsWords = numbersIn(rows.front(), preview.decimalMark) == 0 ||
                              (rows.size() > 1 && numbersIn(rows.front(), preview.decimalMark) + 1 <
                                                      numbersIn(rows[1], preview.decimalMark));
    preview.hasHeader = settings.hasHeader.value_or(firstIsWords);
    const std::size_t firstData = preview.hasHeader ? 1 : 0;
    for (std::size_t c = 0; c < rows.front().size(); ++c) {
        preview.columns.push_back(preview.hasHeader ? std::string(rows.front()[c])
                                                    : std::to_string(c + 1));
    }
    preview.roles.assign(preview.columns.size(), ColumnRole::none);
    preview.firstDataLine = firstData < head.size() ? head[firstData].line : head[0].line + 1;
    rows.erase(rows.begin(), rows.begin() + static_cast<std::ptrdiff_t>(firstData));
    if (preview.hasHeader) {
        guessRolesByName(preview);
    } else {
        guessRolesByValue(preview, rows);
    }
    if (auto taken = takeChosenColumns(preview, settings.columns, where); !taken) {
        return std::unexpected(taken.error());
    }
    findUnit(preview, settings);
    findTimes(preview, rows);
    findDegrees(preview, rows);
    for (std::size_t i = 0; i < std::min(rows.size(), shownRows); ++i) {
        preview.rows.emplace_back(rows[i].begin(), rows[i].end());
    }
    return preview;
}

} // namespace readers

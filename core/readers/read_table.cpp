// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readers/read_table.h"

#include "core/base/number_text.h"
#include "core/gdal/coordinates.h"
#include "core/readers/line_reader.h"
#include "core/readers/sounding_collector.h"
#include "core/readers/table_guess.h"

#include <algorithm>

#include <fmt/format.h>

namespace readers {

namespace {

using base::ErrorKind;

/// Text has hardly any control characters.
bool isBinary(std::string_view line) {
    const auto odd = std::ranges::count_if(
        line, [](char c) { return (c >= 0 && c < ' ' && c != '\t' && c != '\f') || c == '\x7f'; });
    return static_cast<std::size_t>(odd) * 20 > line.size();
}

base::Result<std::vector<HeadRow>> headOf(const std::filesystem::path& path) {
    auto lines = LineReader::open(path);
    if (!lines) {
        return std::unexpected(lines.error());
    }
    constexpr std::size_t enough = 200;
    std::vector<HeadRow> head;
    std::size_t binary = 0;
    std::string_view line;
    while (head.size() < enough && lines->next(line)) {
        if (isBinary(line)) {
            ++binary;
        } else if (!isRemark(line)) {
            head.push_back({std::string(line), lines->lineNumber()});
        }
        if (binary > enough) {
            break;
        }
    }
    if (head.empty() || binary > head.size()) {
        return base::fail(ErrorKind::unusableInput,
                          binary > 0 ? "it is no text and no other kind of file that is known"
                                     : "it has no rows",
                          path.string(), "choose the file with the soundings");
    }
    return head;
}

/// Where the cells that are needed stand in a row.
struct Columns {
    std::size_t x = 0;
    std::size_t y = 0;
    std::size_t depth = 0;
    std::optional<std::size_t> time;
    std::optional<std::size_t> date;
};

base::Result<Columns> columnsOf(const TablePreview& preview, const std::string& where) {
    const auto x = preview.columnOf(ColumnRole::x);
    const auto y = preview.columnOf(ColumnRole::y);
    const auto depth = preview.columnOf(ColumnRole::depth);
    if (!x || !y || !depth) {
        return base::fail(ErrorKind::unusableInput,
                          fmt::format("no column of {} can be told among: {}",
                                      x && y ? "depth" : "positions", preview.columnList()),
                          where, "choose the columns of x, y and depth");
    }
    Columns columns{*x, *y, *depth, {}, preview.columnOf(ColumnRole::date)};
    if (preview.hasTimes) {
        columns.time = preview.columnOf(ColumnRole::time);
    }
    return columns;
}

/// Reads the rows of one table.
class TableRows {
public:
    TableRows(TablePreview preview, const Columns& columns, const SoundingFileSettings& settings,
              std::optional<gdal::Coordinates> coordinates, SoundingCollector& collector)
        : preview_(std::move(preview)), settings_(&settings), coordinates_(std::move(coordinates)),
          collector_(&collector), x_(columns.x), y_(columns.y), depth_(columns.depth),
          time_(columns.time), date_(columns.date) {}

    void take(std::string_view line, std::size_t number) {
        ReadingReport& report = collector_->report();
        ++report.read;
        splitRow(line, preview_.separator, cells_);
        while (cells_.size() > preview_.columns.size() && cells_.back().empty()) {
            cells_.pop_back();
        }
        if (cells_.size() > preview_.columns.size() ||
            cells_.size() <= std::max({x_, y_, depth_})) {
            report.refuse("wrong_columns", number, line);
            return;
        }
        const auto place = placeIn(line, number);
        if (!place) {
            return;
        }
        ++positions_;
        if (cells_[depth_].empty()) {
            report.refuse("no_depth", number, line);
            return;
        }
        const auto shown = base::numberFrom(cells_[depth_], preview_.decimalMark);
        if (!shown) {
            report.refuse("not_a_number", number, line);
            return;
        }
        ++depths_;
        RawSounding row{
            place->lon_deg, place->lat_deg, depthOf(*shown, preview_.unit).inMetres(), {}};
        if (const auto text = timeText(); !text.empty()) {
            row.time = dateAndTimeFrom(text, preview_.dateOrder, settings_->clock);
            if (!row.time) {
                report.refuse("bad_time", number, line);
                return;
            }
        }
        collector_->take(row, number, line);
    }

    [[nodiscard]] std::size_t positions() const { return positions_; }
    [[nodiscard]] std::size_t depths() const { return depths_; }

private:
    std::optional<geo::LonLat> placeIn(std::string_view line, std::size_t number) {
        ReadingReport& report = collector_->report();
        if (cells_[x_].empty() || cells_[y_].empty()) {
            report.refuse("no_position", number, line);
            return std::nullopt;
        }
        const auto x = angleFrom(cells_[x_], preview_.decimalMark);
        const auto y = angleFrom(cells_[y_], preview_.decimalMark);
        if (!x || !y) {
            report.refuse("not_a_number", number, line);
            return std::nullopt;
        }
        if (!coordinates_) {
            return geo::LonLat{*x, *y};
        }
        const auto place = coordinates_->toEarth({*x, *y});
        if (!place) {
            report.refuse("off_earth", number, line);
        }
        return place;
    }

    std::string timeText() const {
        if (!time_ || *time_ >= cells_.size() || cells_[*time_].empty()) {
            return {};
        }
        std::string text;
        if (date_ && *date_ < cells_.size()) {
            text = std::string(cells_[*date_]) + " ";
        }
        return text + std::string(cells_[*time_]);
    }

    TablePreview preview_;
    const SoundingFileSettings* settings_;
    std::optional<gdal::Coordinates> coordinates_;
    SoundingCollector* collector_;
    std::size_t x_;
    std::size_t y_;
    std::size_t depth_;
    std::optional<std::size_t> time_;
    std::optional<std::size_t> date_;
    std::vector<std::string_view> cells_;
    std::size_t positions_ = 0;
    std::size_t depths_ = 0;
};

base::Result<std::optional<gdal::Coordinates>> coordinatesOf(const SoundingFileSettings& settings) {
    std::optional<gdal::Coordinates> coordinates;
    constexpr int degrees = 4326;
    if (settings.epsg && *settings.epsg != degrees) {
        auto made = gdal::Coordinates::ofEpsg(*settings.epsg);
        if (!made) {
            return std::unexpected(made.error());
        }
        coordinates = std::move(*made);
    }
    return coordinates;
}

void noteWhatWasGuessed(const TablePreview& preview, const Columns& columns,
                        const SoundingFileSettings& settings, ReadingReport& report) {
    if (!preview.hasHeader && settings.columns.x.empty()) {
        report.notes.push_back(fmt::format(
            "without a header, columns {}, {} and {} were taken as longitude, latitude and depth",
            columns.x + 1, columns.y + 1, columns.depth + 1));
    }
    if (preview.columnOf(ColumnRole::time) && !preview.hasTimes) {
        report.notes.emplace_back("its times have no date: its soundings are without time");
    }
    if (preview.unit != DepthUnit::metres && !settings.unit) {
        report.notes.push_back("the depth column's name says " + nameOf(preview.unit));
    }
}

} // namespace

base::Result<TablePreview> readTablePreview(const std::filesystem::path& path,
                                            const SoundingFileSettings& settings) {
    const auto head = headOf(path);
    if (!head) {
        return std::unexpected(head.error());
    }
    return guessTable(*head, settings, path.filename().string());
}

base::Result<ReadSoundings> readTable(const std::filesystem::path& path,
                                      const SoundingFileSettings& settings,
                                      base::Progress& progress) {
    const std::string where = path.filename().string();
    const auto preview = readTablePreview(path, settings);
    if (!preview) {
        return std::unexpected(preview.error());
    }
    const auto columns = columnsOf(*preview, where);
    if (!columns) {
        return std::unexpected(columns.error());
    }
    if (!preview->inDegrees && !settings.epsg) {
        return base::fail(ErrorKind::unusableInput,
                          "its coordinates are no degrees and nothing tells their reference system",
                          where, "give its EPSG number");
    }
    auto coordinates = coordinatesOf(settings);
    if (!coordinates) {
        return std::unexpected(coordinates.error());
    }
    auto lines = LineReader::open(path);
    if (!lines) {
        return std::unexpected(lines.error());
    }
    progress.begin("reading the table");
    SoundingCollector collector(SoundingFileKind::table, where);
    noteWhatWasGuessed(*preview, *columns, settings, collector.report());
    collector.read().depthSource = preview->columns[columns->depth];
    TableRows rows(*preview, *columns, settings, std::move(*coordinates), collector);
    std::string_view line;
    while (lines->next(line)) {
        if (!lines->tell(progress)) {
            return std::unexpected(base::cancelled());
        }
        if (lines->lineNumber() >= preview->firstDataLine && !isRemark(line)) {
            rows.take(line, lines->lineNumber());
        }
    }
    return collector.finish(settings, rows.positions(), rows.depths());
}

} // namespace readers

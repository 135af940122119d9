// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readers/read_grid.h"

#include "core/gdal/coordinates.h"
#include "core/gdal/raster_file.h"
#include "core/readers/sounding_collector.h"

#include <algorithm>
#include <cmath>

#include <fmt/format.h>

namespace readers {

namespace {

using base::ErrorKind;
using base::Result;

constexpr double mostSoundings = 250'000.0;
constexpr std::size_t bandsOfAPicture = 3;
/// Bottoms of a water reach its bank: a grid whose least depth is more than this share of its
/// greatest, and more than this depth, tells heights above the sea. A level pond may be deep all
/// over, but not so deep.
constexpr double leastOfGreatest = 0.5;
constexpr double leastHeight = 10.0;

/// What the values of a grid are.
struct Values {
    double low = HUGE_VAL;
    double high = -HUGE_VAL;
    std::size_t below = 0; ///< Negative ones.
    std::size_t above = 0; ///< Positive ones.
    [[nodiscard]] bool countUp() const { return below > above; }
    /// Of the sense that counts.
    [[nodiscard]] std::size_t depths() const { return std::max(below, above); }
};

Values valuesOf(const std::vector<float>& cells) {
    Values values;
    for (const float cell : cells) {
        if (std::isfinite(cell) && cell != 0.0F) {
            const auto value = static_cast<double>(cell);
            values.low = std::min(values.low, value);
            values.high = std::max(values.high, value);
            ++(value < 0.0 ? values.below : values.above);
        }
    }
    return values;
}

Result<void> checkValues(const Values& values, const std::string& where) {
    if (values.depths() == 0) {
        return base::fail(ErrorKind::unusableInput, "the grid holds no depths", where,
                          "give a grid of depths in metres");
    }
    const bool isOfOneSign = values.below == 0 || values.above == 0;
    const double least = std::min(std::fabs(values.low), std::fabs(values.high));
    const double greatest = std::max(std::fabs(values.low), std::fabs(values.high));
    if (isOfOneSign && values.depths() > 1 && least > leastHeight &&
        least > leastOfGreatest * greatest) {
        return base::fail(
            ErrorKind::unusableInput,
            fmt::format(
                "its values lie between {:.4g} and {:.4g}: heights of the bottom, no depths",
                values.low, values.high),
            where, "take each from the height of the water's surface, and give that grid");
    }
    return {};
}

/// Brings positions of the grid to the Earth; nothing asked: they are degrees.
Result<std::optional<gdal::Coordinates>> systemOf(const gdal::Raster& raster,
                                                  const SoundingFileSettings& settings,
                                                  const std::string& where) {
    auto system = settings.epsg        ? gdal::Coordinates::ofEpsg(*settings.epsg)
                  : raster.wkt.empty() ? Result<gdal::Coordinates>(std::unexpected(base::Error()))
                                       : gdal::Coordinates::ofWkt(raster.wkt);
    if (system) {
        return std::optional(std::move(*system));
    }
    if (settings.epsg || !raster.wkt.empty()) {
        return std::unexpected(system.error());
    }
    const auto& t = raster.transform;
    if (!geo::isOnEarth({t[0], t[3]}) ||
        !geo::isOnEarth({t[0] + raster.cols * t[1], t[3] + raster.rows * t[5]})) {
        return base::fail(ErrorKind::unusableInput,
                          "the grid does not say in which system its coordinates are", where,
                          "choose the system of coordinates (EPSG number)");
    }
    return std::optional<gdal::Coordinates>();
}

class GridReading {
public:
    GridReading(const gdal::Raster& raster, const Values& values, const std::string& where)
        : raster_(raster), countsUp_(values.countUp()),
          step_(std::max(1, static_cast<int>(std::ceil(
                                std::sqrt(static_cast<double>(values.depths()) / mostSoundings))))),
          collector_(SoundingFileKind::grid, where) {}

    Result<ReadSoundings> read(const std::optional<gdal::Coordinates>& system,
                               const SoundingFileSettings& settings, base::Progress& progress) {
        for (int row = step_ / 2; row < raster_.rows; row += step_) {
            for (int col = step_ / 2; col < raster_.cols; col += step_) {
                take(col, row, system);
            }
            progress.tell(static_cast<double>(row) / raster_.rows);
            if (progress.stopAsked()) {
                return std::unexpected(base::cancelled());
            }
        }
        if (step_ > 1) {
            collector_.report().notes.push_back(
                fmt::format("one cell in {} was taken, in every direction", step_));
        }
        return collector_.finish(settings, positions_, collector_.size());
    }

private:
    void take(int col, int row, const std::optional<gdal::Coordinates>& system) {
        const auto value = static_cast<double>(
            raster_
                .bands[0][static_cast<std::size_t>(row) * static_cast<std::size_t>(raster_.cols) +
                          static_cast<std::size_t>(col)]);
        if (!std::isfinite(value)) {
            return;
        }
        ++collector_.report().read;
        const double depth_m = countsUp_ ? -value : value;
        const auto line = static_cast<std::size_t>(row) + 1;
        if (depth_m < 0.0) {
            collector_.report().refuse("above_surface", line, fmt::format("{:.4g}", value));
            return;
        }
        const auto& t = raster_.transform;
        const gdal::PlanePosition at{t[0] + (col + 0.5) * t[1] + (row + 0.5) * t[2],
                                     t[3] + (col + 0.5) * t[4] + (row + 0.5) * t[5]};
        const auto place = system ? system->toEarth(at) : std::optional(geo::LonLat{at.x, at.y});
        if (!place) {
            collector_.report().refuse("no_position", line, fmt::format("{} {}", at.x, at.y));
            return;
        }
        ++positions_;
        collector_.take({place->lon_deg, place->lat_deg, depth_m, std::nullopt}, line, "");
        collector_.breakTrack();
    }

    const gdal::Raster& raster_;
    bool countsUp_;
    int step_;
    SoundingCollector collector_;
    std::size_t positions_ = 0;
};

} // namespace

Result<ReadSoundings> readGrid(const std::filesystem::path& path,
                               const SoundingFileSettings& settings, base::Progress& progress) {
    const std::string where = path.string();
    auto raster = gdal::readRasterFile(path, static_cast<int>(bandsOfAPicture));
    if (!raster) {
        return std::unexpected(raster.error());
    }
    if (raster->bands.size() >= bandsOfAPicture) {
        return base::fail(ErrorKind::unusableInput, "it is a picture and holds no depths", where,
                          "lay it under the chart as a backdrop, in the step Shoreline");
    }
    const double unit_m = depthOf(1.0, settings.unit.value_or(DepthUnit::metres)).inMetres();
    for (float& cell : raster->bands[0]) {
        cell = static_cast<float>(static_cast<double>(cell) * unit_m);
    }
    const Values values = valuesOf(raster->bands[0]);
    if (auto checked = checkValues(values, where); !checked) {
        return std::unexpected(checked.error());
    }
    const auto system = systemOf(*raster, settings, where);
    if (!system) {
        return std::unexpected(system.error());
    }
    return GridReading(*raster, values, where).read(*system, settings, progress);
}

} // namespace readers

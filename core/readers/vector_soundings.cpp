// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readers/vector_soundings.h"

#include "core/base/number_text.h"
#include "core/gdal/vector_source.h"
#include "core/readers/sounding_collector.h"

#include <algorithm>
#include <array>
#include <cmath>

#include <fmt/format.h>

namespace readers {

namespace {

std::optional<std::size_t> fieldNamed(const gdal::Layer& layer, std::string_view name) {
    for (std::size_t i = 0; i < layer.fields.size(); ++i) {
        if (base::lowerCase(layer.fields[i]) == base::lowerCase(name)) {
            return i;
        }
    }
    return std::nullopt;
}

std::optional<std::size_t> fieldWith(const gdal::Layer& layer, std::string_view word) {
    for (std::size_t i = 0; i < layer.fields.size(); ++i) {
        if (base::lowerCase(layer.fields[i]).find(word) != std::string::npos) {
            return i;
        }
    }
    return std::nullopt;
}

std::optional<std::size_t> depthField(const gdal::Layer& layer, const std::string& chosen) {
    if (!chosen.empty()) {
        return fieldNamed(layer, chosen);
    }
    for (const std::string_view name : {"depth", "depth_m", "z"}) {
        if (const auto field = fieldNamed(layer, name)) {
            return field;
        }
    }
    return fieldWith(layer, "depth");
}

std::optional<std::size_t> timeField(const gdal::Layer& layer) {
    for (const std::string_view name : {"time", "timestamp", "datetime", "date_time"}) {
        if (const auto field = fieldNamed(layer, name)) {
            return field;
        }
    }
    return std::nullopt;
}

std::optional<double> numberOf(const gdal::FieldValue& value) {
    if (const double* number = std::get_if<double>(&value)) {
        return *number;
    }
    const std::string* text = std::get_if<std::string>(&value);
    return text == nullptr ? std::nullopt : base::numberFrom(*text);
}

/// Takes the soundings of one layer.
class LayerSoundings {
public:
    LayerSoundings(const gdal::Layer& layer, const SoundingFileSettings& settings,
                   SoundingCollector& collector)
        : settings_(&settings), collector_(&collector),
          depth_(depthField(layer, settings.depthSource)), time_(timeField(layer)) {}

    bool take(const gdal::Feature& feature) {
        for (const gdal::PlaceWithZ& point : feature.points) {
            take(feature, point);
        }
        for (const auto& line : feature.lines) {
            collector_->breakTrack();
            for (const gdal::PlaceWithZ& point : line) {
                take(feature, point);
            }
        }
        return true;
    }

    [[nodiscard]] bool hasDepthField() const { return depth_.has_value(); }
    [[nodiscard]] std::size_t positions() const { return positions_; }
    [[nodiscard]] std::size_t depths() const { return depths_; }

private:
    void take(const gdal::Feature& feature, const gdal::PlaceWithZ& point) {
        ReadingReport& report = collector_->report();
        ++report.read;
        const std::string text = fmt::format("point {} of {}", report.read, feature.number);
        ++positions_;
        const auto shown = depth_ ? numberOf(feature.values[*depth_]) : point.z;
        if (!shown) {
            report.refuse("no_depth", feature.number, text);
            return;
        }
        ++depths_;
        RawSounding row{point.place.lon_deg,
                        point.place.lat_deg,
                        depthOf(*shown, settings_->unit.value_or(DepthUnit::metres)).inMetres(),
                        {}};
        if (feature.offEarth && !(std::fabs(row.x_deg) <= 180.0 && std::fabs(row.y_deg) <= 180.0)) {
            report.refuse("off_earth", feature.number, text);
            return;
        }
        if (time_) {
            if (const auto* time = std::get_if<std::string>(&feature.values[*time_])) {
                row.time = units::momentFrom(*time, settings_->clock);
                if (!row.time) {
                    report.refuse("bad_time", feature.number, *time);
                    return;
                }
            }
        }
        collector_->take(row, feature.number, text);
    }

    const SoundingFileSettings* settings_;
    SoundingCollector* collector_;
    std::optional<std::size_t> depth_;
    std::optional<std::size_t> time_;
    std::size_t positions_ = 0;
    std::size_t depths_ = 0;
};

} // namespace

base::Result<ReadSoundings> soundingsOfVector(const std::filesystem::path& path,
                                              SoundingFileKind kind,
                                              const SoundingFileSettings& settings,
                                              base::Progress& progress) {
    auto source = gdal::VectorSource::open(path, settings.epsg);
    if (!source) {
        return std::unexpected(source.error());
    }
    progress.begin("reading the soundings");
    SoundingCollector collector(kind, path.filename().string());
    std::size_t positions = 0;
    std::size_t depths = 0;
    std::string names;
    for (std::size_t i = 0; i < source->layers().size(); ++i) {
        const gdal::Layer& layer = source->layers()[i];
        LayerSoundings layerSoundings(layer, settings, collector);
        const auto field = depthField(layer, settings.depthSource);
        for (const std::string& name : layer.fields) {
            names += (names.empty() ? "" : ", ") + name;
        }
        if (!settings.depthSource.empty() && !field) {
            continue;
        }
        const auto done = source->forEach(
            i, [&](const gdal::Feature& feature) { return layerSoundings.take(feature); },
            progress);
        if (!done && collector.size() == 0) {
            return std::unexpected(done.error());
        }
        if (!done) {
            if (done.error().kind == base::ErrorKind::cancelled) {
                return std::unexpected(done.error());
            }
            collector.report().notes.push_back("read in part only: " + done.error().what);
        }
        positions += layerSoundings.positions();
        depths += layerSoundings.depths();
        collector.read().depthSources.push_back(
            {field ? layer.fields[*field] : std::string("z"), layerSoundings.depths()});
        collector.breakTrack();
    }
    if (collector.read().depthSources.empty()) {
        return base::fail(base::ErrorKind::wrongUse,
                          fmt::format("no layer has a field '{}'", settings.depthSource),
                          path.filename().string(), "choose one of: " + names);
    }
    std::ranges::stable_sort(collector.read().depthSources, std::greater{}, &DepthSource::count);
    collector.read().depthSource = collector.read().depthSources.front().name;
    return collector.finish(settings, positions, depths);
}

} // namespace readers

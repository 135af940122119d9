// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readers/read_gpx.h"

#include "core/base/number_text.h"
#include "core/readers/gpx_file.h"
#include "core/readers/sounding_collector.h"

#include <algorithm>
#include <map>

#include <fmt/format.h>

namespace readers {

namespace {

/// The first number in a text: "hump 3.2 m" gives 3.2.
std::optional<double> numberIn(std::string_view text) {
    const auto isDigit = [](char c) { return c >= '0' && c <= '9'; };
    const auto first = std::ranges::find_if(text, isDigit);
    auto last = first;
    while (last != text.end() && (isDigit(*last) || *last == '.' || *last == ',')) {
        ++last;
    }
    std::string digits(first, last);
    std::ranges::replace(digits, ',', '.');
    while (!digits.empty() && digits.back() == '.') {
        digits.pop_back();
    }
    const auto number = base::numberFrom(digits);
    const bool isNegative = first != text.begin() && first != text.end() && *(first - 1) == '-';
    return number && isNegative ? std::optional(-*number) : number;
}

/// Where depths stand in this file and how many there are.
class Sources {
public:
    void look(const GpxPoint& point) {
        for (const auto& [name, text] : point.extensions) {
            if (base::numberFrom(text)) {
                ++extensions_[name];
            }
        }
        const auto elevation = base::numberFrom(point.elevation);
        negativeElevations_ += elevation && *elevation < 0.0 ? 1U : 0U;
        elevations_ += elevation ? 1U : 0U;
    }

    /// Elements that speak of depth, richest first, then negative elevations.
    [[nodiscard]] std::vector<DepthSource> found() const {
        std::vector<DepthSource> found;
        for (const auto& [name, count] : extensions_) {
            if (base::lowerCase(name).find("depth") != std::string::npos) {
                found.push_back({name, count});
            }
        }
        std::ranges::stable_sort(found, std::greater{}, &DepthSource::count);
        constexpr std::size_t mostly = 2;
        if (negativeElevations_ * mostly > elevations_) {
            found.push_back({"ele", negativeElevations_});
        }
        return found;
    }

private:
    std::map<std::string, std::size_t> extensions_;
    std::size_t negativeElevations_ = 0;
    std::size_t elevations_ = 0;
};

/// Reads the depth of each point from one place.
class GpxSoundings {
public:
    GpxSoundings(std::string source, const SoundingFileSettings& settings,
                 SoundingCollector& collector)
        : source_(std::move(source)), settings_(&settings), collector_(&collector) {}

    void take(const GpxPoint& point) {
        if (point.beginsSegment) {
            collector_->breakTrack();
        }
        ++collector_->report().read;
        const std::string text = fmt::format("{} {}", point.time, depthText(point));
        if (!point.place) {
            collector_->report().refuse("no_position", point.line, text);
            return;
        }
        if (!point.hasFix) {
            collector_->report().refuse("void_fix", point.line, text);
            return;
        }
        ++positions_;
        const auto shown = depthOf(point);
        if (!shown) {
            collector_->report().refuse("no_depth", point.line, text);
            return;
        }
        ++depths_;
        RawSounding row{
            point.place->lon_deg,
            point.place->lat_deg,
            readers::depthOf(*shown, settings_->unit.value_or(DepthUnit::metres)).inMetres(),
            {}};
        if (!point.time.empty()) {
            row.time = units::momentFrom(point.time, settings_->clock);
            if (!row.time) {
                collector_->report().refuse("bad_time", point.line, text);
                return;
            }
        }
        collector_->take(row, point.line, text);
    }

    [[nodiscard]] std::size_t positions() const { return positions_; }
    [[nodiscard]] std::size_t depths() const { return depths_; }

private:
    [[nodiscard]] std::string depthText(const GpxPoint& point) const {
        if (source_ == "ele") {
            return point.elevation;
        }
        if (source_ == "name") {
            return point.name;
        }
        if (source_ == "desc") {
            return point.description;
        }
        const auto at = std::ranges::find(point.extensions, source_,
                                          &std::pair<std::string, std::string>::first);
        return at == point.extensions.end() ? std::string{} : at->second;
    }

    [[nodiscard]] std::optional<double> depthOf(const GpxPoint& point) const {
        const std::string text = depthText(point);
        if (source_ == "name" || source_ == "desc") {
            return numberIn(text);
        }
        const auto number = base::numberFrom(text);
        return number && source_ == "ele" ? std::optional(0.0 - *number) : number;
    }

    std::string source_;
    const SoundingFileSettings* settings_;
    SoundingCollector* collector_;
    std::size_t positions_ = 0;
    std::size_t depths_ = 0;
};

} // namespace

base::Result<ReadSoundings> readGpx(const std::filesystem::path& path,
                                    const SoundingFileSettings& settings,
                                    base::Progress& progress) {
    const std::string where = path.filename().string();
    SoundingCollector collector(SoundingFileKind::gpx, where);
    // Which element holds the depth is known only after all of it was seen; the file is walked
    // twice so that it need not be held.
    Sources sources;
    const auto first = walkGpx(
        path, [&](const GpxPoint& point) { sources.look(point); }, progress);
    if (!first) {
        return std::unexpected(first.error());
    }
    collector.read().depthSources = sources.found();
    std::string source = settings.depthSource;
    if (source.empty()) {
        source =
            collector.read().depthSources.empty() ? "depth" : collector.read().depthSources[0].name;
    }
    collector.read().depthSource = source;
    GpxSoundings soundings(source, settings, collector);
    const auto end = walkGpx(
        path, [&](const GpxPoint& point) { soundings.take(point); }, progress);
    if (!end) {
        return std::unexpected(end.error());
    }
    for (std::size_t i = 0; i < end->entities; ++i) {
        ++collector.report().read;
        collector.report().refuse("entity", end->firstEntityLine, end->firstEntity);
    }
    if (!end->fault.empty()) {
        collector.report().notes.push_back(
            fmt::format("read up to line {} only: {}", end->faultLine, end->fault));
    }
    if (source == "ele") {
        collector.report().notes.emplace_back("depths were taken from negative elevations");
    }
    return collector.finish(settings, soundings.positions(), soundings.depths());
}

} // namespace readers

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/gdal/photograph.h"

#include "core/base/number_text.h"
#include "core/gdal/open_data.h"
#include "core/gdal/session.h"

#include <array>
#include <cmath>
#include <string>

#include <gdal_priv.h>

namespace gdal {

namespace {

/// The numbers of "(53) (30) (7.4)" or "53 30 7.4".
std::optional<std::array<double, 3>> threeNumbers(const std::string& text) {
    std::array<double, 3> numbers{};
    std::size_t count = 0;
    for (std::size_t from = text.find_first_not_of("() "); from != std::string::npos;
         from = text.find_first_not_of("() ", from)) {
        const std::size_t to = std::min(text.find_first_of("() ", from), text.size());
        const auto number = base::numberFrom(text.substr(from, to - from));
        if (!number || count == numbers.size()) {
            return std::nullopt;
        }
        numbers[count++] = *number;
        from = to;
    }
    return count == numbers.size() ? std::optional(numbers) : std::nullopt;
}

/// The fields of one picture.
class Exif {
public:
    explicit Exif(GDALDataset& dataset) : dataset_(dataset) {}

    [[nodiscard]] std::string text(const char* name) const {
        for (const char* domain : {"", "EXIF"}) {
            if (const char* found = dataset_.GetMetadataItem(name, domain)) {
                return std::string(base::trimmed(found));
            }
        }
        return {};
    }
    [[nodiscard]] std::optional<double> degrees(const char* name, const char* side,
                                                char negative) const {
        const auto parts = threeNumbers(text(name));
        const std::string which = text(side);
        if (!parts || which.empty()) {
            return std::nullopt;
        }
        const double sum = (*parts)[0] + (*parts)[1] / 60.0 + (*parts)[2] / 3600.0;
        return which[0] == negative ? -sum : sum;
    }

private:
    GDALDataset& dataset_;
};

/// "2026:10:03" as "2026-10-03".
std::string isoDate(std::string date) {
    constexpr std::size_t length = 10;
    if (date.size() < length) {
        return {};
    }
    date[4] = '-';
    date[7] = '-';
    return date.substr(0, length);
}

std::optional<units::Moment> bySatellite(const Exif& exif) {
    const auto day = units::dayFrom(isoDate(exif.text("EXIF_GPSDateStamp")));
    const auto time = threeNumbers(exif.text("EXIF_GPSTimeStamp"));
    if (!day || !time) {
        return std::nullopt;
    }
    const double seconds = (*time)[0] * 3600.0 + (*time)[1] * 60.0 + (*time)[2];
    return units::Moment(std::chrono::sys_days(*day)) +
           std::chrono::milliseconds(std::llround(1000.0 * seconds));
}

std::optional<units::Moment> byCamera(const Exif& exif, const units::Clock& clock) {
    const std::string original = exif.text("EXIF_DateTimeOriginal");
    constexpr std::size_t length = 19;
    if (original.size() < length) {
        return std::nullopt;
    }
    const std::string time = original.substr(11, 8);
    return units::momentFrom(isoDate(original) + 'T' + time + exif.text("EXIF_OffsetTimeOriginal"),
                             clock);
}

} // namespace

base::Result<Photograph> readPhotograph(const std::filesystem::path& path,
                                        const units::Clock& clock) {
    const Session session;
    const auto dataset =
        openData(path, Holding::raster, session, "it is no picture that can be read",
                 "give the photograph as the camera saved it");
    if (!dataset) {
        return std::unexpected(dataset.error());
    }
    const Exif exif(**dataset);
    Photograph photograph;
    photograph.time = bySatellite(exif);
    if (!photograph.time) {
        photograph.time = byCamera(exif, clock);
    }
    const auto lon_deg = exif.degrees("EXIF_GPSLongitude", "EXIF_GPSLongitudeRef", 'W');
    const auto lat_deg = exif.degrees("EXIF_GPSLatitude", "EXIF_GPSLatitudeRef", 'S');
    if (lon_deg && lat_deg && geo::isOnEarth({*lon_deg, *lat_deg})) {
        photograph.place = geo::LonLat{*lon_deg, *lat_deg};
    }
    return photograph;
}

} // namespace gdal

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/geo/lon_lat.h"

#include <memory>
#include <optional>
#include <string>

namespace gdal {

/// A plane position in some reference system: first coordinate east (or longitude), second north.
struct PlanePosition {
    double x = 0.0;
    double y = 0.0;
};

/// Turns the coordinates of one reference system into longitude and latitude and back. The order of
/// coordinates is always east before north, whatever the system's own rule says. Not for several
/// threads at once.
class Coordinates {
public:
    /// \return unusableInput where there is no system of that number.
    [[nodiscard]] static base::Result<Coordinates> ofEpsg(int code);
    /// \return unusableInput where the text is no reference system.
    [[nodiscard]] static base::Result<Coordinates> ofWkt(const std::string& wkt);
    ~Coordinates();
    Coordinates(Coordinates&&) noexcept;
    Coordinates& operator=(Coordinates&&) noexcept;
    Coordinates(const Coordinates&) = delete;
    Coordinates& operator=(const Coordinates&) = delete;

    /// Nothing where the position lies outside of what the system can take.
    [[nodiscard]] std::optional<geo::LonLat> toEarth(PlanePosition position) const;
    [[nodiscard]] std::optional<PlanePosition> fromEarth(geo::LonLat place) const;

private:
    struct Inside;
    explicit Coordinates(std::unique_ptr<Inside> inside);
    std::unique_ptr<Inside> inside_;
};

} // namespace gdal

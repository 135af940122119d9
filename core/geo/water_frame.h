// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/geo/lon_lat.h"
#include "core/geo/water_point.h"

#include <span>
#include <string>
#include <vector>

namespace geo {

/// The water's own flat metric frame: a transverse Mercator projection of WGS 84 centred on the
/// water, scale 1 on its middle meridian. Chosen once for a water and written in its file. A value;
/// safe to use from any thread.
///
/// Accuracy: forward and back agree to a micrometre; scale is off by less than 5 parts in a million
/// within 20 km of the centre.
class WaterFrame {
public:
    /// The frame centred on the middle of `places`, rounded to 0.01 degree.
    /// \return unusableInput where there is no place, one is not on the Earth, they lie more than 2
    /// degrees apart, or nearer than 2 degrees to a pole.
    [[nodiscard]] static base::Result<WaterFrame> around(std::span<const LonLat> places);
    /// \return wrongUse for a centre that is not on the Earth or nearer than 2 degrees to a pole.
    [[nodiscard]] static base::Result<WaterFrame> centredOn(LonLat centre);

    [[nodiscard]] LonLat centre() const { return centre_; }
    /// waterFromEarth; a place that the projection cannot take (the other side of the Earth) gives
    /// infinite coordinates.
    [[nodiscard]] WaterPoint toWater(LonLat place) const;
    [[nodiscard]] LonLat toEarth(WaterPoint point) const;
    [[nodiscard]] std::vector<WaterPoint> toWater(std::span<const LonLat> places) const;
    [[nodiscard]] std::vector<LonLat> toEarth(std::span<const WaterPoint> points) const;
    /// The frame as WKT 1 in one line for GDAL and GeoPackage.
    [[nodiscard]] std::string wkt() const;
    /// The frame as a PROJ definition.
    [[nodiscard]] std::string definition() const;

    friend bool operator==(const WaterFrame&, const WaterFrame&) = default;

private:
    explicit WaterFrame(LonLat centre) : centre_(centre) {}
    LonLat centre_;
};

/// A geodesic from one place to another on WGS 84 (Karney 2013, through PROJ).
struct Course {
    units::Length distance;
    units::Bearing bearing; ///< At the start.
};

/// Distance and initial bearing that a person steers by. Accurate to 15 nm.
[[nodiscard]] Course courseBetween(LonLat from, LonLat to);
/// Where one comes to on `course` from `from`.
[[nodiscard]] LonLat destination(LonLat from, const Course& course);

/// The version of PROJ in use, for --version.
[[nodiscard]] std::string projVersion();

} // namespace geo

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/light/sun.h"

#include <cmath>
#include <numbers>

namespace light {

namespace {

using std::chrono::hours;
using std::chrono::milliseconds;

constexpr double radiansPerDegree = std::numbers::pi / 180.0;
constexpr double sunrise_deg = -0.833; // 34' of refraction and 16' of the sun's own half width
constexpr double civil_deg = -6.0;
constexpr double dynamicalAhead_days =
    69.0 / 86400.0; // TD - UT about 2020; a minute moves the sun by 2.5"

double sine(double degrees) {
    return std::sin(degrees * radiansPerDegree);
}

double cosine(double degrees) {
    return std::cos(degrees * radiansPerDegree);
}

double arc_deg(double y, double x) {
    return std::atan2(y, x) / radiansPerDegree;
}

/// Days since 2000-01-01 12:00 UT.
double daysSince2000(units::Moment moment) {
    constexpr double unixEpoch_days = 2440587.5 - 2451545.0;
    return unixEpoch_days +
           std::chrono::duration<double, std::ratio<86400>>(moment.time_since_epoch()).count();
}

/// The sun among the stars, and how far the Earth has turned.
struct Equatorial {
    double declination_deg;
    double hourAngleAtGreenwich_deg;
};

Equatorial equatorialAt(units::Moment moment) {
    const double d = daysSince2000(moment);
    const double t = (d + dynamicalAhead_days) / 36525.0;
    const double meanLongitude = 280.46646 + t * (36000.76983 + t * 0.0003032);
    const double anomaly = 357.52911 + t * (35999.05029 - t * 0.0001537);
    const double centre = (1.914602 - t * (0.004817 + t * 0.000014)) * sine(anomaly) +
                          (0.019993 - t * 0.000101) * sine(2.0 * anomaly) +
                          0.000289 * sine(3.0 * anomaly);
    const double node = 125.04 - 1934.136 * t;
    const double nutation = -0.00478 * sine(node);
    const double longitude = meanLongitude + centre - 0.00569 + nutation;
    const double obliquity =
        23.4392911 - t * (0.0130042 + t * (1.64e-7 - t * 5.04e-7)) + 0.00256 * cosine(node);
    const double rightAscension = arc_deg(cosine(obliquity) * sine(longitude), cosine(longitude));
    const double u = d / 36525.0;
    const double siderealTime =
        280.46061837 + 360.98564736629 * d + 0.000387933 * u * u + nutation * cosine(obliquity);
    return {std::asin(sine(obliquity) * sine(longitude)) / radiansPerDegree,
            siderealTime - rightAscension};
}

/// -180 to 180, 0 when the sun is due south (or north), positive after it.
double hourAngle_deg(units::Moment moment, double lon_deg) {
    return std::remainder(equatorialAt(moment).hourAngleAtGreenwich_deg + lon_deg, 360.0);
}

milliseconds turning(double degrees) {
    return milliseconds(std::llround(degrees / 15.0 * 3.6e6));
}

/// The sun's noon nearest to midday by the clock.
units::Moment noonOf(units::Day day, geo::LonLat place, const units::Clock& clock) {
    units::Moment noon = clock.at(day, hours(12));
    for (int pass = 0; pass < 4; ++pass) {
        noon -= turning(hourAngle_deg(noon, place.lon_deg));
    }
    return noon;
}

/// When the sun passes `elevation_deg` between its low and its high point; nothing where it does
/// not.
std::optional<units::Moment> passing(units::Moment low, units::Moment high, double elevation_deg,
                                     geo::LonLat place) {
    const auto isUp = [&](units::Moment at) {
        return sunAt(at, place).elevation_deg >= elevation_deg;
    };
    if (isUp(low) || !isUp(high)) {
        return std::nullopt;
    }
    while (std::chrono::abs(high - low) > milliseconds(1)) {
        const units::Moment middle = low + (high - low) / 2;
        (isUp(middle) ? high : low) = middle;
    }
    return high;
}

} // namespace

SunPosition sunAt(units::Moment moment, geo::LonLat place) {
    const Equatorial sun = equatorialAt(moment);
    const double hourAngle = sun.hourAngleAtGreenwich_deg + place.lon_deg;
    const double up = sine(place.lat_deg) * sine(sun.declination_deg) +
                      cosine(place.lat_deg) * cosine(sun.declination_deg) * cosine(hourAngle);
    const double east = -cosine(sun.declination_deg) * sine(hourAngle);
    const double north = cosine(place.lat_deg) * sine(sun.declination_deg) -
                         sine(place.lat_deg) * cosine(sun.declination_deg) * cosine(hourAngle);
    return {units::Bearing::ofStep(east, north), arc_deg(up, std::hypot(east, north))};
}

SunTimes sunTimesOn(units::Day day, geo::LonLat place, const units::Clock& clock) {
    const units::Moment noon = noonOf(day, place, clock);
    const units::Moment before = noon - hours(12);
    const units::Moment after = noon + hours(12);
    return {passing(before, noon, civil_deg, place), passing(before, noon, sunrise_deg, place),
            passing(after, noon, sunrise_deg, place), passing(after, noon, civil_deg, place)};
}

} // namespace light

// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/graticule.h"

#include "core/base/number_text.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

namespace chart {

namespace {

constexpr double widest_m = 300'000.0; // beyond, the water's frame is no longer true
constexpr int pieces = 8;              // of a line: a parallel bends, if little
constexpr double metresADegree = 111'320.0;

struct Step {
    double degrees = 1.0;
    int decimals = 0;
};

/// The shortest round step of at least `least` degrees.
Step stepFrom(double least) {
    const int power = static_cast<int>(std::floor(std::log10(least)));
    const double unit = std::pow(10.0, power);
    for (const double lead : {1.0, 2.0, 5.0}) {
        if (lead * unit >= least) {
            return {lead * unit, std::max(0, -power)};
        }
    }
    return {10.0 * unit, std::max(0, -power - 1)};
}

struct Range {
    double from = INFINITY;
    double to = -INFINITY;
    void take(double value) {
        from = std::min(from, value);
        to = std::max(to, value);
    }
};

struct Shown {
    Range lon;
    Range lat;
};

/// The longitudes and latitudes that the view reaches, along its whole edge.
Shown shownBy(const geo::WaterFrame& frame, const geo::Box& box) {
    Shown shown;
    const auto take = [&](geo::WaterPoint p) {
        const geo::LonLat place = frame.toEarth(p);
        shown.lon.take(place.lon_deg);
        shown.lat.take(place.lat_deg);
    };
    for (int i = 0; i <= pieces; ++i) {
        const double x_m = box.west_m + box.width_m() * i / pieces;
        const double y_m = box.south_m + box.height_m() * i / pieces;
        take({x_m, box.south_m});
        take({x_m, box.north_m});
        take({box.west_m, y_m});
        take({box.east_m, y_m});
    }
    return shown;
}

/// Calls `act` with each multiple of the step in the range.
template <class Act>
void eachIn(const Range& range, double step, const Act& act) {
    const auto first = static_cast<long>(std::ceil(range.from / step));
    const auto last = static_cast<long>(std::floor(range.to / step));
    for (long i = first; i <= last; ++i) {
        act(static_cast<double>(i) * step);
    }
}

} // namespace

std::vector<GraticuleLine> graticuleOf(const geo::WaterFrame& frame, const ViewFrame& view,
                                       double least) {
    const geo::Box box = view.box();
    if (!(std::max(box.width_m(), box.height_m()) <= widest_m)) {
        return {};
    }
    const Shown shown = shownBy(frame, box);
    const double least_deg = least / view.pixelsPerMetre() / metresADegree;
    const double shrink = std::cos(frame.centre().lat_deg * std::numbers::pi / 180.0);
    const Step lonStep = stepFrom(least_deg / shrink);
    const Step latStep = stepFrom(least_deg);
    std::vector<GraticuleLine> lines;
    const auto add = [&](GraticuleLine line, auto placeAt) {
        for (int i = 0; i <= pieces; ++i) {
            line.path.push_back(frame.toWater(placeAt(static_cast<double>(i) / pieces)));
        }
        lines.push_back(std::move(line));
    };
    eachIn(shown.lon, lonStep.degrees, [&](double lon_deg) {
        add({GraticuleLine::Kind::meridian, lon_deg, lonStep.decimals, {}}, [&](double share) {
            return geo::LonLat{lon_deg, std::lerp(shown.lat.from, shown.lat.to, share)};
        });
    });
    eachIn(shown.lat, latStep.degrees, [&](double lat_deg) {
        add({GraticuleLine::Kind::parallel, lat_deg, latStep.decimals, {}}, [&](double share) {
            return geo::LonLat{std::lerp(shown.lon.from, shown.lon.to, share), lat_deg};
        });
    });
    return lines;
}

QString wordsOf(const GraticuleLine& line) {
    const QString degrees =
        QString::fromStdString(base::fixedText(std::fabs(line.degrees), line.decimals));
    const bool isNegative = line.degrees < 0.0;
    const QString side = line.kind == GraticuleLine::Kind::parallel
                             ? (isNegative ? QStringLiteral("S") : QStringLiteral("N"))
                             : (isNegative ? QStringLiteral("W") : QStringLiteral("E"));
    return degrees + QStringLiteral("° ") + side;
}

} // namespace chart

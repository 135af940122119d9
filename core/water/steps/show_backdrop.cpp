// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/steps/show_backdrop.h"

#include "core/gdal/vector_source.h"

#include <algorithm>
#include <cmath>

#include <fmt/format.h>

namespace water {

using base::ErrorKind;
using base::Progress;
using base::Result;

namespace {

/// Beside the water by no more than this a backdrop is of use: the way to the launch, the road.
constexpr double besideWater_m = 5000.0;
/// More corners than this say nothing more on a screen.
constexpr std::size_t mostCorners = 2'000'000;

double gapBetween_m(const geo::Box& a, const geo::Box& b) {
    const double across_m = std::max({0.0, a.west_m - b.east_m, b.west_m - a.east_m});
    const double along_m = std::max({0.0, a.south_m - b.north_m, b.south_m - a.north_m});
    return std::hypot(across_m, along_m);
}

bool doMeet(const geo::Box& a, const geo::Box& b) {
    return gapBetween_m(a, b) == 0.0;
}

/// Calls `take` with every line, border and point of the file, in degrees.
Result<void> forEachLine(const std::filesystem::path& path,
                         const std::function<void(std::vector<geo::LonLat>, bool)>& take,
                         Progress& progress) {
    auto source = gdal::VectorSource::open(path);
    if (!source) {
        return std::unexpected(source.error());
    }
    const auto placesOf = [](const std::vector<gdal::PlaceWithZ>& line) {
        std::vector<geo::LonLat> places;
        std::transform(line.begin(), line.end(), std::back_inserter(places),
                       [](const gdal::PlaceWithZ& p) { return p.place; });
        return places;
    };
    for (std::size_t layer = 0; layer < source->layers().size(); ++layer) {
        if (!source->layers()[layer].hasReferenceSystem) {
            return base::fail(ErrorKind::unusableInput,
                              "the file does not say of which reference system its coordinates are",
                              path.string(), "put its .prj file beside it, or save it as GeoJSON");
        }
        const auto each = [&](const gdal::Feature& feature) {
            for (const auto& line : feature.lines) {
                take(placesOf(line), false);
            }
            for (const geo::LonLatPiece& piece : feature.pieces) {
                take(piece.outer, true);
                for (const geo::LonLatRing& island : piece.islands) {
                    take(island, true);
                }
            }
            if (!feature.points.empty()) {
                for (const gdal::PlaceWithZ& point : feature.points) {
                    take({point.place}, false);
                }
            }
            return true;
        };
        if (auto read = source->forEach(layer, each, progress); !read) {
            return read;
        }
    }
    return {};
}

/// Some of the places that the file covers: its edge, or all its corners.
Result<std::vector<geo::LonLat>> placesIn(const std::filesystem::path& path, Progress& progress) {
    std::error_code fault;
    if (!std::filesystem::exists(path, fault)) {
        return base::fail(ErrorKind::unusableInput, "there is no such file", path.string(),
                          "check the name");
    }
    auto edge = gdal::pictureEdge(path);
    // Of a file that is a picture, what is wrong with the picture is what the user must hear.
    if (edge || edge.error().what.starts_with("the picture")) {
        return edge;
    }
    if (!gdal::VectorSource::open(path)) {
        return base::fail(ErrorKind::unusableInput,
                          "it is neither a picture nor a map that can be read", path.string(),
                          "give a GeoTIFF, a JPEG with its world file, a Shapefile, a GeoPackage, "
                          "GeoJSON or KML");
    }
    std::vector<geo::LonLat> places;
    const auto read = forEachLine(
        path,
        [&places](const std::vector<geo::LonLat>& line, bool) {
            if (places.size() < mostCorners) {
                places.insert(places.end(), line.begin(), line.end());
            }
        },
        progress);
    if (!read) {
        return std::unexpected(read.error());
    }
    if (places.empty()) {
        return base::fail(ErrorKind::unusableInput, "the map holds nothing that can be drawn",
                          path.string(), "choose another");
    }
    return places;
}

/// A short dash for a place alone, so that it is seen.
geo::Path dashAt(geo::WaterPoint p, double pixel_m) {
    return {{p.x_m - 2.0 * pixel_m, p.y_m}, {p.x_m + 2.0 * pixel_m, p.y_m}};
}

Result<Backdrop> linesOf(const std::filesystem::path& path, const BackdropPlace& place,
                         const gdal::PictureWindow& window, const geo::Box& sight,
                         Progress& progress) {
    Backdrop backdrop{place.whole, window, {}, {}};
    std::size_t corners = 0;
    const auto take = [&](const std::vector<geo::LonLat>& line, bool isClosed) {
        geo::Path way = place.frame.toWater(line);
        geo::Box box;
        for (const geo::WaterPoint p : way) {
            box.take(p);
        }
        if (way.empty() || !doMeet(box, sight) || corners > mostCorners) {
            return;
        }
        if (isClosed) {
            way.push_back(way.front());
        }
        way = way.size() == 1 ? dashAt(way.front(), window.pixel_m)
                              : geo::simplified(way, 0.5 * window.pixel_m);
        corners += way.size();
        backdrop.lines.push_back(std::move(way));
    };
    if (auto read = forEachLine(path, take, progress); !read) {
        return std::unexpected(read.error());
    }
    return backdrop;
}

} // namespace

Result<BackdropPlace> lookAtBackdrop(const std::filesystem::path& path,
                                     const std::optional<geo::WaterFrame>& frame,
                                     const geo::Box& around, Progress& progress) {
    const auto places = placesIn(path, progress);
    if (!places) {
        return std::unexpected(places.error());
    }
    const auto laid = frame ? Result<geo::WaterFrame>(*frame) : geo::WaterFrame::around(*places);
    if (!laid) {
        base::Error error = laid.error();
        error.where = path.string();
        return std::unexpected(std::move(error));
    }
    BackdropPlace place{*laid, {}};
    for (const geo::WaterPoint p : laid->toWater(*places)) {
        place.whole.take(p);
    }
    if (!around.isEmpty() && gapBetween_m(place.whole, around) > besideWater_m) {
        return base::fail(ErrorKind::unusableInput,
                          fmt::format("the backdrop lies {:.0f} km from the water",
                                      gapBetween_m(place.whole, around) / 1000.0),
                          path.string(),
                          "choose one of this water, or see whether its reference "
                          "system is right");
    }
    return place;
}

Result<Backdrop> showBackdrop(const std::filesystem::path& path, const BackdropPlace& place,
                              const gdal::PictureWindow& window, Progress& progress) {
    const geo::Box sight{window.west_m, window.north_m - window.rows * window.pixel_m,
                         window.west_m + window.cols * window.pixel_m, window.north_m};
    if (!gdal::pictureEdge(path)) {
        return linesOf(path, place, window, sight, progress);
    }
    auto picture = gdal::readPicture(path, window, place.frame.wkt(), progress);
    if (!picture) {
        return std::unexpected(picture.error());
    }
    return Backdrop{place.whole, window, std::move(picture->argb), {}};
}

} // namespace water

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readers/read_shoreline.h"

#include "core/gdal/vector_source.h"
#include "core/readers/gpx_file.h"
#include "core/readers/read_soundings.h"
#include "core/readers/shore_rings.h"

#include <algorithm>

#include <fmt/format.h>

namespace readers {

namespace {

using base::ErrorKind;

/// What a file offers as shore.
struct Found {
    std::vector<geo::LonLatPiece> pieces;
    std::vector<geo::LonLatRing> lines;
};

base::Result<void> checkPlaces(const geo::LonLatRing& ring, const std::string& where) {
    for (const geo::LonLat place : ring) {
        if (geo::isOnEarth(place)) {
            continue;
        }
        const bool isTurned = geo::isOnEarth({place.lat_deg, place.lon_deg});
        return base::fail(
            ErrorKind::unusableInput,
            fmt::format("the shore has a corner at longitude {}, latitude {}, which is "
                        "not on the Earth",
                        place.lon_deg, place.lat_deg),
            where,
            isTurned ? "longitude and latitude look swapped: turn them round"
                     : "give the EPSG number of its coordinates");
    }
    return {};
}

base::Result<Found> foundInGpx(const std::filesystem::path& path, base::Progress& progress) {
    Found found;
    const auto end = walkGpx(
        path,
        [&](const GpxPoint& point) {
            if (point.kind == GpxKind::waypoint) {
                return;
            }
            if (point.beginsSegment || found.lines.empty()) {
                found.lines.emplace_back();
            }
            if (point.place && point.hasFix) {
                found.lines.back().push_back(*point.place);
            }
        },
        progress);
    if (!end) {
        return std::unexpected(end.error());
    }
    return found;
}

/// Rings of fewer than three corners hold no water and are left out.
void addPiece(geo::LonLatPiece piece, Found& found) {
    const auto isFlat = [](const geo::LonLatRing& ring) { return ring.size() < 3; };
    if (!isFlat(piece.outer)) {
        std::erase_if(piece.islands, isFlat);
        found.pieces.push_back(std::move(piece));
    }
}

base::Result<Found> foundInVector(const std::filesystem::path& path, std::optional<int> epsg,
                                  base::Progress& progress) {
    auto source = gdal::VectorSource::open(path, epsg);
    if (!source) {
        return std::unexpected(source.error());
    }
    Found found;
    for (std::size_t layer = 0; layer < source->layers().size(); ++layer) {
        const auto done = source->forEach(
            layer,
            [&](const gdal::Feature& feature) {
                for (const geo::LonLatPiece& piece : feature.pieces) {
                    addPiece(piece, found);
                }
                for (const auto& line : feature.lines) {
                    geo::LonLatRing places;
                    for (const gdal::PlaceWithZ& p : line) {
                        places.push_back(p.place);
                    }
                    found.lines.push_back(std::move(places));
                }
                return true;
            },
            progress);
        if (!done) {
            return std::unexpected(done.error());
        }
    }
    return found;
}

base::Result<void> checkFound(const Found& found, const std::string& where) {
    for (const geo::LonLatPiece& piece : found.pieces) {
        if (auto checked = checkPlaces(piece.outer, where); !checked) {
            return checked;
        }
        for (const geo::LonLatRing& island : piece.islands) {
            if (auto checked = checkPlaces(island, where); !checked) {
                return checked;
            }
        }
    }
    for (const geo::LonLatRing& line : found.lines) {
        if (auto checked = checkPlaces(line, where); !checked) {
            return checked;
        }
    }
    return {};
}

/// Which ring lies in which is found by looking at each pair: 20 000 take a few seconds.
constexpr std::size_t mostRings = 20000;

std::vector<geo::LonLatRing> closedRings(std::vector<geo::LonLatRing> lines) {
    std::vector<geo::LonLatRing> rings;
    for (geo::LonLatRing& line : lines) {
        if (geo::LonLatRing ring = closedRing(std::move(line)); !ring.empty()) {
            rings.push_back(std::move(ring));
        }
    }
    return rings;
}

std::vector<geo::LonLatRing> ringsOf(std::vector<geo::LonLatPiece> pieces) {
    std::vector<geo::LonLatRing> rings;
    for (geo::LonLatPiece& piece : pieces) {
        rings.push_back(std::move(piece.outer));
        std::ranges::move(piece.islands, std::back_inserter(rings));
    }
    return rings;
}

} // namespace

base::Result<std::vector<geo::LonLatPiece>> readShoreline(const std::filesystem::path& path,
                                                          std::optional<int> epsg,
                                                          base::Progress& progress) {
    const auto kind = readKindOf(path);
    if (!kind) {
        return std::unexpected(kind.error());
    }
    progress.begin("reading the shore");
    auto found = *kind == SoundingFileKind::gpx ? foundInGpx(path, progress)
                                                : foundInVector(path, epsg, progress);
    if (!found) {
        return std::unexpected(found.error());
    }
    const std::string where = path.filename().string();
    const bool hasLines = !found->lines.empty();
    if (const auto checked = checkFound(*found, where); !checked) {
        return std::unexpected(checked.error());
    }
    std::vector<geo::LonLatPiece> pieces = std::move(found->pieces);
    if (pieces.size() != 1) {
        // Islands may stand in the file on their own.
        std::vector<geo::LonLatRing> rings =
            pieces.empty() ? closedRings(std::move(found->lines)) : ringsOf(std::move(pieces));
        if (rings.size() > mostRings) {
            return base::fail(
                ErrorKind::unusableInput,
                fmt::format("it has {} rings, more than the shore of one water has", rings.size()),
                where, "cut out the water that you fish");
        }
        pieces = nested(std::move(rings));
    }
    if (pieces.empty()) {
        return base::fail(ErrorKind::unusableInput,
                          !hasLines ? "it has neither polygons nor lines"
                                    : "none of its lines comes back to where it began",
                          where, "give the shore as a polygon, or as a line all around the water");
    }
    return pieces;
}

} // namespace readers

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/structure/border_lines.h"

namespace structure {

using geo::WaterPoint;

namespace {

/// A short straight piece of a ring.
struct Stretch {
    WaterPoint a;
    WaterPoint b;
    bool belongs = false;
};

std::vector<Stretch> stretchesOf(const geo::Ring& ring, double step_m,
                                 const BelongsToLine& belongs) {
    geo::Path closed = ring;
    closed.push_back(ring.front());
    const geo::Path line = geo::densified(closed, step_m);
    std::vector<Stretch> out;
    for (std::size_t i = 1; i < line.size(); ++i) {
        out.push_back({line[i - 1], line[i], belongs(line[i - 1], line[i])});
    }
    return out;
}

/// Takes short interruptions into the line.
void bridge(std::vector<Stretch>& stretches) {
    constexpr std::size_t longest = 4;
    const std::size_t n = stretches.size();
    for (std::size_t i = 0; i < n; ++i) {
        if (!stretches[i].belongs || stretches[(i + 1) % n].belongs) {
            continue;
        }
        for (std::size_t gap = 1; gap <= longest && gap + 1 < n; ++gap) {
            if (stretches[(i + gap + 1) % n].belongs) {
                for (std::size_t k = 1; k <= gap; ++k) {
                    stretches[(i + k) % n].belongs = true;
                }
                break;
            }
        }
    }
}

/// The unbroken runs of stretches that belong, as lines.
void addRuns(const std::vector<Stretch>& stretches, std::vector<geo::Path>& out) {
    const std::size_t n = stretches.size();
    std::size_t start = 0;
    while (start < n && stretches[start].belongs) {
        ++start;
    }
    const bool allRound = start == n;
    bool inRun = false;
    for (std::size_t k = 0; k < n; ++k) {
        const Stretch& s = stretches[(start + k) % n];
        if (s.belongs && !inRun) {
            out.push_back({s.a});
        }
        inRun = s.belongs;
        if (inRun) {
            out.back().push_back(s.b);
        }
    }
    if (allRound && n > 0) {
        out.back().back() = out.back().front();
    }
}

} // namespace

std::vector<geo::Path> linesAlongBorder(const std::vector<geo::Piece>& pieces, double step_m,
                                        const BelongsToLine& belongs) {
    std::vector<geo::Path> out;
    const auto collect = [&](const geo::Ring& ring) {
        std::vector<Stretch> stretches = stretchesOf(ring, step_m, belongs);
        bridge(stretches);
        addRuns(stretches, out);
    };
    for (const geo::Piece& piece : pieces) {
        collect(piece.outer);
        for (const geo::Ring& island : piece.islands) {
            collect(island);
        }
    }
    return out;
}

} // namespace structure

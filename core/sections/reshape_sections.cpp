// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sections/reshape_sections.h"

#include "core/base/result.h"
#include "core/geo/path.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>

namespace sections {

using base::ErrorKind;
using base::Result;
using geo::WaterPoint;
using grid::Cell;

namespace {

double turn(WaterPoint a, WaterPoint b, WaterPoint c) {
    return (b.x_m - a.x_m) * (c.y_m - a.y_m) - (b.y_m - a.y_m) * (c.x_m - a.x_m);
}

/// Points on a line count as to its left, so that a line through middles of cells still parts them.
bool crosses(WaterPoint a, WaterPoint b, WaterPoint c, WaterPoint d) {
    return (turn(a, b, c) >= 0.0) != (turn(a, b, d) >= 0.0) &&
           (turn(c, d, a) >= 0.0) != (turn(c, d, b) >= 0.0);
}

base::Error refusal(std::string what, std::string whatToDo) {
    return {ErrorKind::unusableInput, std::move(what), "sections", std::move(whatToDo)};
}

class Reshaping {
public:
    Reshaping(grid::PieceGrid& pieces, std::size_t& count, const geo::WaterFrame& frame,
              units::Area least)
        : pieces_(pieces), count_(count), frame_(frame),
          leastCells_(std::max<std::size_t>(
              fewCells, static_cast<std::size_t>(
                            std::ceil(least.inSquareMetres() / pieces.frame().cellArea_m2())))) {}

    Result<void> make(const SectionChange& change) {
        if (change.kind == SectionChange::Kind::split) {
            return split(pieceUnder(change.line), change.line);
        }
        if (change.places.size() != 2) {
            return std::unexpected(refusal("two places are needed", "choose two sections"));
        }
        const std::int32_t a = pieceAt(change.places[0]);
        const std::int32_t b = pieceAt(change.places[1]);
        if (a < 0 || b < 0) {
            return std::unexpected(refusal("one of the two places lies in no section",
                                           "choose places inside the sections"));
        }
        return change.kind == SectionChange::Kind::join ? join(a, b) : redraw(a, b, change.line);
    }

private:
    using Cells = std::vector<std::size_t>;
    static constexpr std::size_t fewCells = 4;

    std::int32_t pieceAt(geo::LonLat place) const {
        const Cell c = pieces_.frame().cellOf(frame_.toWater(place));
        return pieces_.frame().holds(c) ? pieces_[c] : -1;
    }

    geo::Path pathOf(const std::vector<geo::LonLat>& line) const {
        return frame_.toWater(std::span(line));
    }

    /// The piece in which most of the line lies; negative where none does.
    std::int32_t pieceUnder(const std::vector<geo::LonLat>& line) const {
        std::map<std::int32_t, int> under;
        if (line.size() >= 2) {
            for (const WaterPoint p :
                 geo::densified(pathOf(line), 0.5 * pieces_.frame().cell_m())) {
                const Cell c = pieces_.frame().cellOf(p);
                if (pieces_.frame().holds(c) && pieces_[c] >= 0) {
                    ++under[pieces_[c]];
                }
            }
        }
        const auto most =
            std::max_element(under.begin(), under.end(),
                             [](const auto& a, const auto& b) { return a.second < b.second; });
        return most == under.end() ? -1 : most->first;
    }

    Cells cellsOf(std::int32_t piece) const {
        Cells cells;
        for (std::size_t i = 0; i < pieces_.size(); ++i) {
            if (pieces_[i] == piece) {
                cells.push_back(i);
            }
        }
        return cells;
    }

    template <class F>
    void eachSide(std::size_t i, F f) const {
        const Cell c = pieces_.frame().cellAt(i);
        for (const Cell n : {Cell{c.col, c.row - 1}, Cell{c.col - 1, c.row}, Cell{c.col + 1, c.row},
                             Cell{c.col, c.row + 1}}) {
            if (pieces_.frame().holds(n)) {
                f(pieces_.frame().index(n));
            }
        }
    }

    bool touch(std::int32_t a, std::int32_t b) const {
        bool found = false;
        for (const std::size_t i : cellsOf(a)) {
            eachSide(i, [&](std::size_t n) { found = found || pieces_[n] == b; });
        }
        return found;
    }

    Result<void> join(std::int32_t a, std::int32_t b) {
        if (a == b) {
            return std::unexpected(
                refusal("the two places lie in one section already", "choose two sections"));
        }
        if (!touch(a, b)) {
            return std::unexpected(
                refusal("the two sections do not touch", "join sections that lie side by side"));
        }
        for (std::int32_t& piece : pieces_.values()) {
            piece = piece == std::max(a, b) ? std::min(a, b) : piece;
            piece = piece > std::max(a, b) ? piece - 1 : piece;
        }
        --count_;
        return {};
    }

    Result<void> redraw(std::int32_t a, std::int32_t b, const std::vector<geo::LonLat>& line) {
        const grid::PieceGrid before = pieces_;
        if (auto joined = join(a, b); !joined) {
            return joined;
        }
        if (auto cut = split(std::min(a, b), line); !cut) {
            pieces_ = before;
            ++count_;
            return cut;
        }
        return {};
    }

    Result<void> split(std::int32_t piece, const std::vector<geo::LonLat>& line) {
        if (piece < 0) {
            return std::unexpected(refusal("the line runs through no section",
                                           "draw it across the section to be cut"));
        }
        const geo::Path path = pathOf(line);
        std::vector<Cells> apart = partedBy({}, cellsOf(piece));
        std::iter_swap(apart.begin(), mostUnder(path, apart));
        std::vector<Cells> sides = partedBy(path, apart.front());
        if (sides.size() < 2) {
            return std::unexpected(
                refusal("the line does not cut the section in two",
                        "draw it right across, from border to border or shore to shore"));
        }
        std::stable_sort(sides.begin(), sides.end(),
                         [](const auto& x, const auto& y) { return x.size() > y.size(); });
        if (sides[1].size() < leastCells_) {
            return std::unexpected(refusal("the line cuts off too little to be a section",
                                           "draw it further inside the section"));
        }
        const auto fresh = static_cast<std::int32_t>(count_++);
        for (const std::size_t i : sides[1]) {
            pieces_[i] = fresh;
        }
        for (std::size_t k = 2; k < sides.size(); ++k) {
            giveScrap(sides[k], piece, fresh);
        }
        for (std::size_t k = 1; k < apart.size(); ++k) {
            if (isNearer(apart[k].front(), sides[1], sides[0])) {
                for (const std::size_t i : apart[k]) {
                    pieces_[i] = fresh;
                }
            }
        }
        return {};
    }

    /// The part of a section with pockets that most of the line runs through, else the largest.
    std::vector<Cells>::iterator mostUnder(const geo::Path& line, std::vector<Cells>& apart) const {
        const std::set<std::size_t> under = cellsNear(line);
        const auto rank = [&](const Cells& cells) {
            return std::pair(std::count_if(cells.begin(), cells.end(),
                                           [&](std::size_t i) { return under.contains(i); }),
                             cells.size());
        };
        return std::max_element(apart.begin(), apart.end(),
                                [&](const Cells& x, const Cells& y) { return rank(x) < rank(y); });
    }

    [[nodiscard]] bool isNearer(std::size_t from, const Cells& first, const Cells& second) const {
        const grid::GridFrame& f = pieces_.frame();
        const WaterPoint at = f.centre(f.cellAt(from));
        const auto nearest_m = [&](const Cells& cells) {
            double least_m = INFINITY;
            for (const std::size_t i : cells) {
                least_m = std::min(least_m, geo::distance_m(at, f.centre(f.cellAt(i))));
            }
            return least_m;
        };
        return nearest_m(first) < nearest_m(second);
    }

    /// What a line with bends leaves over goes to the side that it touches most.
    void giveScrap(const Cells& scrap, std::int32_t first, std::int32_t second) {
        const std::set<std::size_t> own(scrap.begin(), scrap.end());
        int withFirst = 0;
        int withSecond = 0;
        for (const std::size_t i : scrap) {
            eachSide(i, [&](std::size_t n) {
                if (!own.contains(n)) {
                    withFirst += pieces_[n] == first ? 1 : 0;
                    withSecond += pieces_[n] == second ? 1 : 0;
                }
            });
        }
        for (const std::size_t i : scrap) {
            pieces_[i] = withSecond > withFirst ? second : first;
        }
    }

    /// The cells in groups that hang together along sides without crossing the line.
    std::vector<Cells> partedBy(const geo::Path& line, const Cells& cells) const {
        const std::set<std::size_t> near = cellsNear(line);
        const std::set<std::size_t> wanted(cells.begin(), cells.end());
        std::set<std::size_t> met;
        std::vector<Cells> groups;
        for (const std::size_t first : cells) {
            if (!met.insert(first).second) {
                continue;
            }
            Cells group{first};
            for (std::size_t k = 0; k < group.size(); ++k) {
                const std::size_t from = group[k];
                eachSide(from, [&](std::size_t to) {
                    const bool mayCross = near.contains(from) && near.contains(to);
                    if (wanted.contains(to) && !met.contains(to) &&
                        !(mayCross && isParted(line, from, to))) {
                        met.insert(to);
                        group.push_back(to);
                    }
                });
            }
            groups.push_back(std::move(group));
        }
        return groups;
    }

    bool isParted(const geo::Path& line, std::size_t from, std::size_t to) const {
        const grid::GridFrame& f = pieces_.frame();
        const WaterPoint a = f.centre(f.cellAt(from));
        const WaterPoint b = f.centre(f.cellAt(to));
        int crossings = 0;
        for (std::size_t k = 1; k < line.size(); ++k) {
            crossings += crosses(line[k - 1], line[k], a, b) ? 1 : 0;
        }
        return crossings % 2 == 1;
    }

    std::set<std::size_t> cellsNear(const geo::Path& line) const {
        const grid::GridFrame& f = pieces_.frame();
        std::set<std::size_t> near;
        for (const WaterPoint p : geo::densified(line, 0.5 * f.cell_m())) {
            const Cell c = f.cellOf(p);
            for (int dr = -1; dr <= 1; ++dr) {
                for (int dc = -1; dc <= 1; ++dc) {
                    if (f.holds({c.col + dc, c.row + dr})) {
                        near.insert(f.index({c.col + dc, c.row + dr}));
                    }
                }
            }
        }
        return near;
    }

    grid::PieceGrid& pieces_;
    std::size_t& count_;
    const geo::WaterFrame& frame_;
    std::size_t leastCells_;
};

} // namespace

std::vector<ChangeRefused> reshapeSections(grid::PieceGrid& pieces, std::size_t& count,
                                           std::span<const SectionChange> changes,
                                           const geo::WaterFrame& frame, units::Area least) {
    Reshaping reshaping(pieces, count, frame, least);
    std::vector<ChangeRefused> refused;
    for (std::size_t k = 0; k < changes.size(); ++k) {
        if (auto made = reshaping.make(changes[k]); !made) {
            refused.push_back({k, std::move(made.error())});
        }
    }
    return refused;
}

} // namespace sections

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/grid/grid.h"
#include "core/store/results/result_parts.h"

namespace store {

/// The parts that say something of the cells of a drawing, of which many neighbours are alike.
template <class Archive>
class ResultCells : public ResultParts<Archive> {
public:
    using ResultParts<Archive>::take;

    /// \param frame that every grid lies on.
    ResultCells(Archive& archive, const grid::GridFrame& frame)
        : ResultParts<Archive>(archive), frame_(frame), cellsLeft_(mostZonesOver * frame.size()) {}

    /// Cells, ascending: as first and number of each stretch of neighbours.
    template <OneOf<std::vector<std::size_t>> T>
    void takeCells(T& cells) {
        if constexpr (Archive::isReading) {
            readCells(cells);
        } else {
            writeCells(cells);
        }
    }
    template <class T>
    void take(grid::Grid<T>& grid) {
        grid = grid::Grid<T>(frame_);
        takeRuns(grid.values());
    }
    template <class T>
    void take(const grid::Grid<T>& grid) {
        if (grid.frame() != frame_) {
            archive_.fail();
        }
        takeRuns(grid.values());
    }
    /// As many values as the list has, as (value, how often): neighbours are mostly alike.
    template <class T>
    void takeRuns(T& values) {
        for (std::size_t first = 0; first < values.size() && archive_.isFine();) {
            auto value = values[first];
            std::uint32_t many = 1;
            if constexpr (!Archive::isReading) {
                while (first + many < values.size() && values[first + many] == value) {
                    ++many;
                }
            }
            take(value);
            archive_.number(many);
            if (many == 0 || many > values.size() - first) {
                archive_.fail();
                return;
            }
            if constexpr (Archive::isReading) {
                std::fill_n(values.begin() + static_cast<std::ptrdiff_t>(first), many, value);
            }
            first += many;
        }
    }

protected:
    using ResultParts<Archive>::archive_;

private:
    /// Zones of different kinds may lie over each other, but not that many.
    static constexpr std::size_t mostZonesOver = 4;

    void writeCells(const std::vector<std::size_t>& cells) {
        std::vector<std::uint32_t> stretches;
        for (std::size_t k = 0; k < cells.size(); ++k) {
            if (k > 0 && cells[k] == cells[k - 1] + 1) {
                ++stretches.back();
            } else {
                stretches.push_back(static_cast<std::uint32_t>(cells[k]));
                stretches.push_back(1);
            }
        }
        this->size(stretches, sizeof(std::uint32_t));
        archive_.numbers(std::span(stretches));
    }
    void readCells(std::vector<std::size_t>& cells) {
        std::vector<std::uint32_t> stretches;
        this->size(stretches, sizeof(std::uint32_t));
        archive_.numbers(std::span(stretches));
        std::size_t next = 0;
        for (std::size_t k = 0; k + 1 < stretches.size(); k += 2) {
            const std::size_t first = stretches[k];
            const std::size_t many = stretches[k + 1];
            if (first < next || first + many > frame_.size() || many > cellsLeft_) {
                archive_.fail();
                return;
            }
            cellsLeft_ -= many;
            for (next = first; next < first + many; ++next) {
                cells.push_back(next);
            }
        }
    }

    grid::GridFrame frame_;
    std::size_t cellsLeft_;
};

} // namespace store

// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/coverage.h"

#include "core/store/geopackage.h"
#include "core/store/statement.h"
#include "core/store/tile_image.h"

#include <algorithm>
#include <cmath>

#include <fmt/format.h>
#include <sqlite3.h>

namespace store {

namespace {

constexpr float noData = -9999.0F;

int tilesAlong(int cells) {
    return (cells + tileSide - 1) / tileSide;
}

/// The cells of one tile, no data beyond the grid; nothing where it holds no data at all.
std::optional<std::vector<float>> tileOf(const grid::Grid<float>& values_m, int column, int row) {
    const grid::GridFrame& frame = values_m.frame();
    std::vector<float> tile(tileSize, noData);
    bool hasData = false;
    const int rows = std::min(tileSide, frame.rows() - row * tileSide);
    const int cols = std::min(tileSide, frame.cols() - column * tileSide);
    for (int r = 0; r < rows; ++r) {
        for (int c = 0; c < cols; ++c) {
            const float value_m = values_m[{column * tileSide + c, row * tileSide + r}];
            if (!std::isnan(value_m)) {
                tile[static_cast<std::size_t>(r) * tileSide + static_cast<std::size_t>(c)] =
                    value_m;
                hasData = true;
            }
        }
    }
    return hasData ? std::optional(std::move(tile)) : std::nullopt;
}

void keepTiles(Connection& connection, std::string_view table, const grid::Grid<float>& values_m) {
    Statement insert(connection, fmt::format("INSERT INTO {} (zoom_level, tile_column, tile_row, "
                                             "tile_data) VALUES (0,?,?,?)",
                                             table));
    Statement ancillary(connection, "INSERT INTO gpkg_2d_gridded_tile_ancillary "
                                    "(tpudt_name, tpudt_id) VALUES (?,?)");
    for (int row = 0; row < tilesAlong(values_m.frame().rows()); ++row) {
        for (int column = 0; column < tilesAlong(values_m.frame().cols()); ++column) {
            const auto tile = tileOf(values_m, column, row);
            if (tile) {
                insert.run(column, row, Blob(tileImage(*tile)));
                ancillary.run(table, sqlite3_last_insert_rowid(connection.handle()));
            }
        }
    }
}

/// The rows that make the table a layer.
void registerCoverage(Connection& connection, std::string_view table, std::string_view quantity,
                      const grid::GridFrame& frame) {
    const geo::Box box = frame.box();
    const int columns = tilesAlong(frame.cols());
    const int rows = tilesAlong(frame.rows());
    Statement contents(connection,
                       "INSERT INTO gpkg_contents (table_name, data_type, identifier, description, "
                       "min_x, min_y, max_x, max_y, srs_id) "
                       "VALUES (?,'2d-gridded-coverage',?,?,?,?,?,?,?)");
    contents.run(table, table, quantity, box.west_m, box.south_m, box.east_m, box.north_m,
                 frameSrs);
    Statement set(connection, "INSERT INTO gpkg_tile_matrix_set (table_name, srs_id, min_x, min_y, "
                              "max_x, max_y) VALUES (?,?,?,?,?,?)");
    set.run(table, frameSrs, frame.west_m(), frame.north_m() - rows * tileSide * frame.cell_m(),
            frame.west_m() + columns * tileSide * frame.cell_m(), frame.north_m());
    Statement matrix(connection,
                     "INSERT INTO gpkg_tile_matrix (table_name, zoom_level, matrix_width, "
                     "matrix_height, tile_width, tile_height, pixel_x_size, pixel_y_size) "
                     "VALUES (?,0,?,?,?,?,?,?)");
    matrix.run(table, columns, rows, tileSide, tileSide, frame.cell_m(), frame.cell_m());
    Statement ancillary(connection,
                        "INSERT INTO gpkg_2d_gridded_coverage_ancillary (tile_matrix_set_name, "
                        "datatype, data_null, grid_cell_encoding, uom, field_name, "
                        "quantity_definition) VALUES (?,'float',?,'grid-value-is-area','m',?,?)");
    ancillary.run(table, static_cast<double>(noData), table, quantity);
    Statement extension(connection,
                        "INSERT INTO gpkg_extensions (table_name, column_name, extension_name, "
                        "definition, scope) VALUES (?,'tile_data','gpkg_2d_gridded_coverage',"
                        "'http://docs.opengeospatial.org/is/17-066r1/17-066r1.html','read-write')");
    extension.run(table);
}

} // namespace

void keepCoverage(Connection& connection, std::string_view table, std::string_view quantity,
                  const grid::Grid<float>& values_m) {
    dropCoverage(connection, table);
    registerCoverage(connection, table, quantity, values_m.frame());
    keepTiles(connection, table, values_m);
}

void dropCoverage(Connection& connection, std::string_view table) {
    for (const auto& [from, column] :
         {std::pair("gpkg_2d_gridded_tile_ancillary", "tpudt_name"),
          std::pair("gpkg_2d_gridded_coverage_ancillary", "tile_matrix_set_name"),
          std::pair("gpkg_tile_matrix", "table_name"),
          std::pair("gpkg_tile_matrix_set", "table_name"),
          std::pair("gpkg_extensions", "table_name"), std::pair("gpkg_contents", "table_name")}) {
        Statement drop(connection, fmt::format("DELETE FROM {} WHERE {}=?", from, column));
        drop.run(table);
    }
    connection.execute(fmt::format("DELETE FROM {}", table));
}

std::optional<grid::Grid<float>> recallCoverage(Connection& connection, std::string_view table,
                                                const grid::GridFrame& frame) {
    grid::Grid<float> values_m(frame, NAN);
    Statement tiles(connection,
                    fmt::format("SELECT tile_column, tile_row, tile_data FROM {}", table));
    tiles.ask();
    while (tiles.next()) {
        const std::int64_t column = tiles.wholeNumber(0);
        const std::int64_t row = tiles.wholeNumber(1);
        const auto tile = valuesOfTile(tiles.blob(2));
        if (!tile || column < 0 || row < 0 || column >= tilesAlong(frame.cols()) ||
            row >= tilesAlong(frame.rows())) {
            return std::nullopt;
        }
        for (std::size_t i = 0; i < tileSize; ++i) {
            const grid::Cell cell{
                static_cast<int>(column * tileSide) + static_cast<int>(i % tileSide),
                static_cast<int>(row * tileSide) + static_cast<int>(i / tileSide)};
            if (frame.holds(cell) && (*tile)[i] != noData) {
                values_m[cell] = (*tile)[i];
            }
        }
    }
    return connection.isFine() ? std::optional(std::move(values_m)) : std::nullopt;
}

} // namespace store

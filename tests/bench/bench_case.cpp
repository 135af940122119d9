// SPDX-License-Identifier: GPL-3.0-or-later
// Draws one case of the gridding bench: bench_case CASE_FOLDER DEPTH.tif TRUST.tif [CELL_M]
#include "core/gdal/raster_file.h"
#include "core/surface/draw_water.h"
#include "tests/support/gridding_case.h"

#include <cmath>
#include <cstdio>
#include <string>

#include <fmt/format.h>

namespace {

int failed(const base::Error& error) {
    fmt::print(stderr, "{}\n", error.sentence());
    return 1;
}

base::Result<void> writeGrid(const std::string& path, const grid::GridFrame& frame,
                             const std::vector<float>& values, const geo::WaterFrame& water) {
    gdal::RasterToWrite raster;
    raster.west_m = frame.west_m();
    raster.north_m = frame.north_m();
    raster.cell_m = frame.cell_m();
    raster.cols = frame.cols();
    raster.rows = frame.rows();
    raster.values = values;
    raster.wkt = water.wkt();
    raster.description = "metres";
    return gdal::writeRasterFile(path, raster);
}

int run(const std::string& folder, const std::string& depthPath, const std::string& trustPath,
        const surface::DrawSettings& settings) {
    const auto lake = support::readGriddingCase(folder);
    if (!lake) {
        return failed(lake.error());
    }
    base::Progress progress;
    const auto drawn = surface::drawWater(lake->outline, lake->soundings, settings, progress);
    if (!drawn) {
        return failed(drawn.error());
    }
    const surface::DrawReport& report = drawn->report;
    fmt::print("cell {} m, {} cells, a {}, b2 {}, held out mean {:.3f} m, {} used, {} outside, {} "
               "spikes, {} iterations, draw {:.2f} s, trust {:.2f} s\n",
               report.cell.inMetres(), report.cells, report.stiffness, report.contourStiffness,
               report.heldOut.value_or(surface::HeldOutError{}).mean_m, report.soundingsUsed,
               report.soundingsOutside, report.spikes.size(), report.iterations, report.drawSeconds,
               report.trustSeconds);
    for (const auto& [path, values] :
         {std::pair(depthPath, &drawn->depth.raw_m()),
          std::pair(trustPath, &drawn->trust.halfWidths_m().values())}) {
        if (const auto written = writeGrid(path, drawn->depth.frame(), *values, lake->frame);
            !written) {
            return failed(written.error());
        }
    }
    return 0;
}

} // namespace

int main(int argc, char** argv) {
    if (argc < 4) {
        std::fputs("usage: bench_case CASE_FOLDER DEPTH.tif TRUST.tif [CELL_M]\n", stderr);
        return 2;
    }
    try {
        surface::DrawSettings settings;
        if (argc > 4) {
            settings.cell = units::Length::metres(std::stod(argv[4]));
        }
        return run(argv[1], argv[2], argv[3], settings);
    } catch (const std::exception& e) {
        std::fprintf(stderr, "%s\n", e.what());
        return 1;
    }
}

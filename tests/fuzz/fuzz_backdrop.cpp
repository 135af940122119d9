// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/steps/show_backdrop.h"
#include "tests/fuzz/input_file.h"
#include "tests/fuzz/promises.h"

#include <algorithm>
#include <cmath>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* bytes, std::size_t size) {
    const fuzz::InputFile file(bytes, size);
    base::Progress progress;
    const auto place = water::lookAtBackdrop(file.path(), std::nullopt, {}, progress);
    if (!place) {
        fuzz::checkRefusal(place.error());
        return 0;
    }
    const geo::Box& whole = place->whole;
    const double pixel_m = std::max((whole.east_m - whole.west_m) / 40.0, 0.01);
    const gdal::PictureWindow window{whole.west_m, whole.north_m, pixel_m, 40, 30};
    const auto shown = water::showBackdrop(file.path(), *place, window, progress);
    if (!shown) {
        fuzz::checkRefusal(shown.error());
        return 0;
    }
    fuzz::promise(shown->argb.empty() || shown->argb.size() == 40U * 30U,
                  "a picture fills its window");
    for (const geo::Path& line : shown->lines) {
        fuzz::promise(std::ranges::all_of(line,
                                          [](geo::WaterPoint p) {
                                              return std::isfinite(p.x_m) && std::isfinite(p.y_m);
                                          }),
                      "a line lies somewhere");
    }
    return 0;
}

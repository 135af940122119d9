// SPDX-License-Identifier: GPL-3.0-or-later
// draw_grid SHORE SOUNDINGS: draws the bottom of a water and tells its area and mean depth. SHORE
// has rows "lon lat", one ring in degrees; SOUNDINGS has rows "lon lat depth", metres positive
// down.
#include <core/surface/draw_water.h>
#include <core/surface/measure_water.h>

#include <fstream>
#include <iostream>

static int refuse(const base::Error& error) {
    std::cerr << "draw_grid: " << error.sentence() << '\n';
    return 1;
}

int main(int argc, char** argv) {
    geo::LonLatPiece shore;
    std::ifstream shoreFile(argc == 3 ? argv[1] : "");
    for (geo::LonLat at; shoreFile >> at.lon_deg >> at.lat_deg;) {
        shore.outer.push_back(at);
    }
    const auto frame = geo::WaterFrame::around(shore.outer);
    if (!frame)
        return refuse(frame.error());
    const auto outline = geo::Outline::make({&shore, 1}, *frame);
    if (!outline)
        return refuse(outline.error());

    std::vector<soundings::KeptSounding> kept;
    std::ifstream soundingsFile(argv[2]);
    for (soundings::KeptSounding s;
         soundingsFile >> s.place.lon_deg >> s.place.lat_deg >> s.depth_m;) {
        s.x_m = frame->toWater(s.place).x_m;
        s.y_m = frame->toWater(s.place).y_m;
        kept.push_back(s);
    }
    base::Progress progress; // Tells nobody and never stops; a window derives its own.
    const auto drawn = surface::drawWater(*outline, kept, {}, progress);
    if (!drawn)
        return refuse(drawn.error());
    const auto form = surface::measureWater(drawn->depth, drawn->mask, *outline, {}, progress);
    if (!form)
        return refuse(form.error());
    std::cout << "area_m2 " << form->area.inSquareMetres() << "\nmean_depth_m "
              << form->meanDepth.inMetres() << '\n';
}

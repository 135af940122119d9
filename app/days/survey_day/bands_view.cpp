// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/survey_day/bands_view.h"

#include "app/chart/todays_form.h"
#include "app/wording/tongue.h"
#include "app/wording/typed_amount.h"
#include "core/surface/hypsography.h"
#include "core/water/document/chosen_scale.h"

#include <cmath>

namespace days::survey_day {

namespace {

QString worthFishing(const water::WaterForm& form, units::Depth limit,
                     const wording::Words& words) {
    const surface::Hypsography& h = form.hypsography;
    const units::Area within = units::Area::squareMetres(
        h.area.inSquareMetres() - surface::stepAt(h, limit).area.inSquareMetres());
    const QString level =
        std::abs(form.rise.inMetres()) < 0.005
            ? wording::Tongue::tr("at chart level")
            : wording::Tongue::tr("at today's level, %1").arg(words.levelChange(form.rise));
    return wording::Tongue::tr("Down to the limit: %1, %2 of the water %3.")
        .arg(words.areaInBoth(within), wording::Words::share(within / h.area), level);
}

} // namespace

BandsView bandsViewOf(const ViewInput& input) {
    BandsView view;
    const contours::Bands& bands = water::bandsOf(input.water, input.derived);
    QStringList edges;
    for (const units::Depth edge : bands.edges()) {
        edges.push_back(input.words.shortDepthNumber(edge));
    }
    view.edges = edges.join(wording::depthsApart()) + ' ' + input.words.depthUnit();
    view.areEdgesChosen = !input.water.settings.bands;
    view.isLimitChosen = view.areEdgesChosen && !input.water.settings.limit;
    view.limit = input.words.shortDepthNumber(bands.limit()) + ' ' + input.words.depthUnit();
    view.state = wording::Tongue::tr("%1 bands, limit %2").arg(bands.count()).arg(view.limit);
    if (const auto& form = chart::formOf(input.derived)) {
        view.worthFishing = worthFishing(*form, bands.limit(), input.words);
        const units::Area whole = form->hypsography.area;
        for (const contours::BandMeasure& band : form->bandMeasures) {
            view.bands.push_back(
                {input.words.depthRange(band.from, band.to), input.words.area(band.area),
                 wording::Words::share(band.area / whole), input.words.volume(band.volume)});
        }
    }
    if (input.derived.structure) {
        view.state = wording::Tongue::tr("%1 bands, %2 zones")
                         .arg(bands.count())
                         .arg(input.derived.structure->zones.size());
    }
    return view;
}

} // namespace days::survey_day

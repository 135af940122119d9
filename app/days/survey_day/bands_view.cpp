// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/survey_day/bands_view.h"

#include "app/chart/todays_form.h"
#include "app/days/survey_day/zone_rows.h"

namespace days::survey_day {

BandsView bandsViewOf(const ViewInput& input) {
    BandsView view;
    const contours::Bands& bands = input.water.settings.bands;
    QStringList edges;
    for (const units::Depth edge : bands.edges()) {
        edges.push_back(input.words.shortDepthNumber(edge));
    }
    view.edges = edges.join(QStringLiteral(", ")) + ' ' + input.words.depthUnit();
    view.limit = input.words.shortDepthNumber(bands.limit()) + ' ' + input.words.depthUnit();
    view.state = QStringLiteral("%1 bands, limit %2").arg(bands.count()).arg(view.limit);
    if (const auto& form = chart::formOf(input.derived)) {
        const units::Area whole = form->hypsography.area;
        for (const contours::BandMeasure& band : form->bandMeasures) {
            view.bands.push_back(
                {input.words.depthRange(band.from, band.to), input.words.area(band.area),
                 wording::Words::share(band.area / whole), input.words.volume(band.volume)});
        }
    }
    if (input.derived.structure) {
        view.zones = zoneRows(*input.derived.structure, input.words);
        view.state = QStringLiteral("%1 bands, %2 zones").arg(bands.count()).arg(view.zones.size());
    }
    return view;
}

} // namespace days::survey_day

// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/survey_day/backdrop_part.h"

#include "app/days/chart_link.h"
#include "app/days/what_to_open.h"

#include <QCheckBox>
#include <QFileInfo>
#include <QLabel>
#include <QLayout>
#include <QPushButton>
#include <QSignalBlocker>
#include <QSlider>

namespace days::survey_day {

namespace {

constexpr int strongest = 100; // of the slider: the backdrop as it is

} // namespace

BackdropPart::BackdropPart(DayContext context, BackdropKeeper& keeper, QWidget* parent)
    : StepBody(parent), context_(context), keeper_(keeper) {
    layout()->setContentsMargins(0, 0, 0, 0);
    addHeading(tr("Backdrop"));
    file_ = addWords();
    takeAway_ = makeButton(tr("No backdrop"), {}, tr("Take the file from under the chart"),
                           [this] { keeper_.takeAway(); });
    shown_ = new QCheckBox(tr("Shown"), this);
    shown_->setToolTip(tr("Show the backdrop under the chart (Ctrl+Shift+B)"));
    connect(shown_, &QCheckBox::toggled, this,
            [this](bool isShown) { context_.chart.setShown(chart::LayerKind::backdrop, isShown); });
    addRow({makeButton(tr("Backdrop..."), QStringLiteral("Ctrl+B"),
                       tr("A georeferenced picture or map from a file, to trace the shore over: "
                          "GeoTIFF, JPEG with world file, Shapefile, GeoPackage, KML..."),
                       [this] { ask(); }),
            takeAway_, shown_});
    strength_ = new QSlider(Qt::Horizontal, this);
    strength_->setRange(0, strongest);
    strength_->setPageStep(strongest / 10);
    connect(strength_, &QSlider::valueChanged, this,
            [this](int value) { keeper_.setStrength(static_cast<double>(value) / strongest); });
    addField(tr("Strength"), strength_,
             tr("To the right the backdrop comes out and the depths fade"));
    connect(&keeper_, &BackdropKeeper::changed, this, &BackdropPart::refresh);
    connect(&context_.chart, &ChartLink::contentChanged, this, &BackdropPart::refresh);
    refresh();
}

void BackdropPart::refresh() {
    const bool hasFile = !keeper_.path().isEmpty();
    setWords(file_, hasFile ? QFileInfo(keeper_.path()).fileName()
                            : tr("A picture or map under the chart, to trace the shore over."));
    file_->setToolTip(keeper_.path());
    const QSignalBlocker quietShown(shown_);
    const QSignalBlocker quietStrength(strength_);
    shown_->setChecked(hasFile &&
                       context_.chart.content().shown.contains(chart::LayerKind::backdrop));
    strength_->setValue(qRound(keeper_.strength() * strongest));
    for (QWidget* widget : {static_cast<QWidget*>(takeAway_), static_cast<QWidget*>(shown_),
                            static_cast<QWidget*>(strength_)}) {
        widget->setEnabled(hasFile);
    }
}

void BackdropPart::ask() {
    if (!context_.open.isOpen()) {
        emit context_.open.happened(tr("There is no water yet: bring something in first."));
        return;
    }
    const QString path = askWhatToOpen(
        this, preferences::FileKind::picture, tr("Backdrop"),
        tr("Pictures and maps (*.tif *.tiff *.jpg *.jpeg *.png *.jp2 *.vrt *.asc *.gpkg *.shp "
           "*.geojson *.json *.kml *.gpx *.pdf);;All files (*)"));
    if (!path.isEmpty()) {
        keeper_.choose(path);
    }
}

} // namespace days::survey_day

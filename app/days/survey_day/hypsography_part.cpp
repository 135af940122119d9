// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/survey_day/hypsography_part.h"

#include "app/chart/palette.h"
#include "app/widgets/ink_roles.h"
#include "app/widgets/plain_table.h"

#include <QChart>
#include <QChartView>
#include <QClipboard>
#include <QEvent>
#include <QGuiApplication>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineSeries>
#include <QPushButton>
#include <QShortcut>
#include <QVBoxLayout>
#include <QValueAxis>

namespace days::survey_day {

namespace {

constexpr int curveHeight = 260;
constexpr int rowsShown = 14;
constexpr int mostColumns = 5;

QLineSeries* lineOf(const HypsographyView::Curve& points, const QPen& pen, QChart* chart) {
    auto* line = new QLineSeries(chart);
    for (const QPointF point : points) {
        line->append(point);
    }
    line->setPen(pen);
    return line;
}

QValueAxis* axisOf(const QString& title, const QColor& colour, const QPalette& colours) {
    auto* axis = new QValueAxis;
    axis->setTitleText(title);
    axis->setTitleBrush(colour);
    axis->setGridLineColor(
        chart::mixed(colours.color(QPalette::Window), colours.color(widgets::inkRole), 0.12));
    axis->setLinePenColor(colours.color(widgets::faintRole));
    axis->setLabelsColor(colour);
    axis->setLabelFormat(QStringLiteral("%g"));
    return axis;
}

} // namespace

HypsographyPart::HypsographyPart(QWidget* parent)
    : QWidget(parent), curve_(new QChartView(this)), about_(new QLabel(this)),
      table_(
          new widgets::PlainTable(QStringList(mostColumns, QStringLiteral("-")), rowsShown, this)),
      copied_(new QLabel(this)) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(8);
    auto* heading = new QLabel(tr("Area and volume by depth"), this);
    heading->setProperty("voice", "heading");
    column->addWidget(heading);
    curve_->setRenderHint(QPainter::Antialiasing);
    curve_->setFixedHeight(curveHeight);
    curve_->setFrameShape(QFrame::NoFrame);
    curve_->setAccessibleName(tr("Area and volume against depth"));
    curve_->viewport()->setAccessibleName(curve_->accessibleName());
    curve_->setToolTip(tr("How much water lies at each depth or deeper: area on the scale below, "
                          "volume on the scale above"));
    column->addWidget(curve_);
    for (QLabel* label : {about_, copied_}) {
        label->setProperty("voice", "second");
        label->setWordWrap(true);
    }
    column->addWidget(about_);
    table_->setAccessibleName(tr("Area and volume by depth"));
    table_->setToolTip(tr("Ctrl+C copies the whole table for a spreadsheet"));
    column->addWidget(table_);
    auto* copy = new QPushButton(tr("Copy table"), this);
    copy->setToolTip(tr("Puts the table on the clipboard, columns apart by tabs, in the units "
                        "shown (Ctrl+C in the table)"));
    connect(copy, &QPushButton::clicked, this, &HypsographyPart::copy);
    auto* keys = new QShortcut(QKeySequence::Copy, table_);
    keys->setContext(Qt::WidgetShortcut);
    connect(keys, &QShortcut::activated, this, &HypsographyPart::copy);
    auto* row = new QHBoxLayout;
    row->addWidget(copy);
    row->addWidget(copied_, 1);
    column->addLayout(row);
}

void HypsographyPart::show(const HypsographyView& view) {
    if (view == view_ && isVisibleTo(parentWidget()) == !view.rows.empty()) {
        return; // A curve takes longer to lay out than all the rest of the day.
    }
    view_ = view;
    setVisible(!view_.rows.empty());
    copied_->clear();
    if (view_.rows.empty()) {
        return;
    }
    about_->setText(view_.about);
    table_->setHeadings(view_.heads);
    for (int column = 0; column < mostColumns; ++column) {
        table_->setColumnHidden(column, column >= view_.columns.size());
    }
    table_->setRows(view_.rows);
    draw();
}

void HypsographyPart::draw() {
    const QColor areaColour = palette().color(widgets::weedRole);
    const QColor volumeColour = palette().color(widgets::rodsRole);
    auto* chart = new QChart;
    chart->legend()->hide();
    chart->setBackgroundVisible(false);
    chart->setMargins({0, 0, 0, 0});
    QValueAxis* depth = axisOf(view_.depthTitle, palette().color(widgets::inkRole), palette());
    depth->setReverse(true);
    QValueAxis* area = axisOf(view_.areaTitle, areaColour, palette());
    QValueAxis* volume = axisOf(view_.volumeTitle, volumeColour, palette());
    volume->setGridLineVisible(false);
    chart->addAxis(depth, Qt::AlignLeft);
    chart->addAxis(area, Qt::AlignBottom);
    chart->addAxis(volume, Qt::AlignTop);
    const auto add = [&](const HypsographyView::Curve& points, QValueAxis* across,
                         const QColor& colour, Qt::PenStyle style) {
        if (points.empty()) {
            return;
        }
        QLineSeries* line =
            lineOf(points, QPen(colour, style == Qt::SolidLine ? 2.0 : 1.2, style), chart);
        chart->addSeries(line);
        line->attachAxis(depth);
        line->attachAxis(across);
        depth->setRange(0.0, std::max(depth->max(), points.back().y()));
        across->setRange(0.0, std::max(across->max(), points.front().x()));
    };
    for (QValueAxis* axis : {depth, area, volume}) {
        axis->setRange(0.0, 1e-6);
    }
    add(view_.chartArea, area, areaColour, Qt::DashLine);
    add(view_.chartVolume, volume, volumeColour, Qt::DashLine);
    add(view_.area, area, areaColour, Qt::SolidLine);
    add(view_.volume, volume, volumeColour, Qt::SolidLine);
    for (QValueAxis* axis : {area, volume}) {
        axis->applyNiceNumbers();
    }
    depth->setTickType(QValueAxis::TicksDynamic);
    depth->setTickAnchor(0.0);
    depth->setTickInterval(view_.depthTick);
    QChart* before = curve_->chart();
    curve_->setChart(chart);
    delete before;
}

void HypsographyPart::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::PaletteChange && !view_.rows.empty()) {
        draw();
    }
}

void HypsographyPart::copy() {
    QGuiApplication::clipboard()->setText(view_.asText());
    copied_->setText(tr("copied, %1 rows").arg(view_.rows.size()));
}

} // namespace days::survey_day

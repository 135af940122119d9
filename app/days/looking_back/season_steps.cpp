// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/palette.h"
#include "app/days/looking_back/log_digest.h"
#include "app/days/looking_back/log_view.h"
#include "app/days/looking_back/steps.h"
#include "app/widgets/plain_table.h"
#include "core/water/questions/review_log.h"

#include <QAreaSeries>
#include <QChart>
#include <QChartView>
#include <QLabel>
#include <QLineSeries>
#include <QValueAxis>

#include <algorithm>

namespace days::looking_back {

namespace {

constexpr int chartHeight = 240;

class HoursStep : public DayStep {
public:
    explicit HoursStep(DayContext context) : DayStep(context) {
        text_ = addWords();
        view_ = new QChartView(this);
        view_->setRenderHint(QPainter::Antialiasing);
        view_->setFixedHeight(chartHeight);
        view_->setFrameShape(QFrame::NoFrame);
        view_->setAccessibleName(tr("Rate over the day"));
        addWide(view_);
        view_->hide();
    }

    DayStepLine refresh() override {
        if (asked_ != context_.open.water()) {
            asked_ = context_.open.water();
            if (asked_->log.empty()) {
                view_->hide();
                setWords(text_, tr("Nothing logged yet."));
                best_ = tr("nothing logged yet");
            } else {
                ask();
            }
        }
        return {best_, false};
    }

private:
    void ask() {
        startJob<rates::HourRates>(
            tr("Counting the hours"),
            [water = asked_](base::Progress& progress) {
                return water::reviewHours(*water, {}, progress);
            },
            [this](const base::Result<rates::HourRates>& hours) {
                if (hours) {
                    draw(*hours);
                } else {
                    setWords(text_, QString::fromStdString(hours.error().sentence()));
                }
                emit lineChanged();
            });
    }

    void draw(const rates::HourRates& hours) {
        const chart::Palette& colours = chart::Palette::screen();
        auto* chart = new QChart;
        chart->legend()->hide();
        chart->setBackgroundVisible(false);
        chart->setMargins({0, 0, 0, 0});
        auto* low = new QLineSeries(chart);
        auto* high = new QLineSeries(chart);
        auto* line = new QLineSeries(chart);
        double most = 0.0;
        for (const rates::HourRate& point : hours.points) {
            if (!point.rate) {
                continue;
            }
            low->append(point.hour, point.rate->low);
            high->append(point.hour, point.rate->high);
            line->append(point.hour, point.rate->per10RodHours);
            most = std::max(most, point.rate->high);
        }
        auto* band = new QAreaSeries(high, low);
        band->setPen(Qt::NoPen);
        band->setBrush(chart::withAlpha(colours.plum, 0.22));
        line->setPen(QPen(colours.plum, 2.0));
        chart->addSeries(band);
        chart->addSeries(line);
        addAxes(*chart, {band, line}, most);
        QChart* before = view_->chart();
        view_->setChart(chart);
        delete before;
        view_->show();
        setWords(text_,
                 tr("Fish per 10 rod-hours by the hour of the day, with the band in which "
                    "the rate may lie; from %1.")
                     .arg(counted(static_cast<std::size_t>(hours.trips), tr("trip"), tr("trips"))));
        best_ = bestHoursWords(hours);
    }

    static void addAxes(QChart& chart, const std::vector<QAbstractSeries*>& series, double most) {
        const chart::Palette& colours = chart::Palette::screen();
        auto* hour = new QValueAxis;
        hour->setRange(0.0, 24.0);
        hour->setTickCount(9);
        hour->setLabelFormat(QStringLiteral("%d"));
        auto* rate = new QValueAxis;
        rate->setRange(0.0, std::max(most, 0.1));
        rate->applyNiceNumbers();
        rate->setLabelFormat(QStringLiteral("%.1f"));
        for (QValueAxis* axis : {hour, rate}) {
            axis->setGridLineColor(chart::mixed(colours.card, colours.ink, 0.12));
            axis->setLinePenColor(colours.faintInk);
            axis->setLabelsColor(colours.ink);
            chart.addAxis(axis, axis == hour ? Qt::AlignBottom : Qt::AlignLeft);
            for (QAbstractSeries* one : series) {
                one->attachAxis(axis);
            }
        }
    }

    std::shared_ptr<const water::Water> asked_;
    QString best_;
    QLabel* text_ = nullptr;
    QChartView* view_ = nullptr;
};

class SeasonStep : public DayStep {
public:
    explicit SeasonStep(DayContext context) : DayStep(context) {
        table_ = new widgets::PlainTable(
            {tr("Month"), tr("trips"), tr("stays"), tr("blanks"), tr("fish")}, 16, this);
        addWide(table_);
    }

    DayStepLine refresh() override {
        const auto rows = seasonRows(sumOf(water().log, water().clock));
        table_->setRows(rows);
        return {counted(rows.size(), tr("month"), tr("months")), false};
    }

private:
    widgets::PlainTable* table_ = nullptr;
};

} // namespace

DayStep* makeHoursStep(DayContext context) {
    return new HoursStep(context);
}

DayStep* makeSeasonStep(DayContext context) {
    return new SeasonStep(context);
}

} // namespace days::looking_back

// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/survey_day/next_view.h"
#include "app/days/survey_day/steps.h"
#include "app/days/where_to_save.h"
#include "app/widgets/plain_table.h"
#include "app/wording/tongue.h"
#include "core/outputs/write_gpx.h"
#include "core/water/steps/propose_trip.h"

#include <QLabel>
#include <QPointer>
#include <QPushButton>
#include <QSpinBox>

#include <functional>

namespace days::survey_day {

namespace {

constexpr int rowsShown = 14;

class NextStep : public SurveyStep {
public:
    explicit NextStep(SurveyContext context) : SurveyStep(context) {
        minutes_ = new QSpinBox(this);
        minutes_->setRange(15, 720);
        minutes_->setSingleStep(15);
        minutes_->setValue(120);
        minutes_->setSuffix(tr(" min"));
        addField(tr("Time for it"), minutes_, tr("On the water, from the launch and back"));
        speed_ = addBoatSpeed(tr("While sounding, and between the lines"));
        save_ = makeButton(
            tr("Save as GPX..."), {},
            tr("The whole trip as one route for a plotter or phone: from the launch along "
               "every line and back"),
            [this] { save(); });
        propose_ =
            makeButton(tr("Propose lines"), {},
                       tr("The lines that would tell most about the water"), [this] { propose(); });
        addRow({propose_, save_});
        old_ = addWords();
        old_->setProperty("voice", "wrong");
        trip_ = addWords();
        line_ = addWords();
        table_ = new widgets::PlainTable(
            {tr("Line"), tr("length"), tr("heading"), tr("min"), tr("gain")}, rowsShown, this);
        addWide(table_);
        table_->setToolTip(tr("In the order of the trip; gain is the share of what all lines bring "
                              "in trust"));
        connect(table_, &widgets::PlainTable::rowChosen, this, [this](int row) {
            emit lineChanged();
            const auto lines = context_.chart.content().nextLines;
            if (lines && row >= 0 && row < static_cast<int>(lines->lines.size())) {
                context_.chart.lookAt(lines->lines[static_cast<std::size_t>(row)].start);
            }
        });
        connect(&context_.chart, &ChartLink::contentChanged, this, &DayStep::lineChanged);
    }

protected:
    DayStepLine refreshFrom(const ViewInput& input) override {
        const auto lines = context_.chart.content().nextLines;
        const NextView view =
            nextViewOf(lines.get(), input.water.frame, input.words, table_->chosen());
        speed_->showAmount(words().speed(water().plan.tackle.boatSpeed));
        propose_->setEnabled(input.derived.drawn != nullptr);
        save_->setEnabled(lines != nullptr);
        const bool isOld = lines && !isOfNow();
        setWords(old_, isOld
                           ? tr("Older than your last change: proposed anew before they are saved.")
                           : QString());
        setWords(trip_, view.trip);
        setWords(line_, view.line);
        table_->setVisible(lines != nullptr);
        table_->setRows(view.rows);
        return {view.state, isOld};
    }

private:
    /// Proposes lines for the map as it is now, then calls `then`, where there is one.
    void propose(const std::function<void()>& then = {}) {
        context_.open.whenMapIsCurrent(
            [step = QPointer(this), then](const base::Result<void>& current) {
                if (step && current) {
                    step->proposeNow(then);
                } else if (step && then) {
                    step->tell(current.error()); // The map itself says why it cannot be drawn.
                }
            });
    }

    void proposeNow(const std::function<void()>& then) {
        const std::chrono::minutes time(minutes_->value());
        const open_water::Basis basis = context_.open.basisOfNow();
        startJob<surface::SurveyTrip>(
            tr("Looking for lines to sound"),
            [water = context_.open.water(), derived = context_.open.derived(),
             time](base::Progress& progress) {
                return water::proposeTrip(*water, derived, time, progress);
            },
            [this, basis, then](base::Result<surface::SurveyTrip> trip) {
                if (trip) {
                    basis_ = basis;
                    context_.chart.setNextLines(
                        std::make_shared<const surface::SurveyTrip>(std::move(*trip)));
                    context_.chart.setShown(chart::LayerKind::nextLines, true);
                } else if (then || trip.error().kind != base::ErrorKind::cancelled) {
                    tell(trip.error());
                }
                if (trip && then) {
                    then();
                }
            });
    }

    /// Whether the lines on the chart are those of the water as it is.
    bool isOfNow() const {
        return basis_ == context_.open.basisOfNow() &&
               context_.open.isCurrent(water::Step::sections);
    }

    void save() {
        const QString path = askWhereToSave(*this, context_.open, tr("Trip to sound"),
                                            QStringLiteral("sounding-trip.gpx"), tr("GPX (*.gpx)"));
        if (path.isEmpty()) {
            return;
        }
        if (isOfNow()) {
            write(path);
        } else {
            propose([step = QPointer(this), path] {
                if (step) {
                    step->write(path);
                }
            });
        }
    }

    void write(const QString& path) {
        const auto lines = context_.chart.content().nextLines;
        if (!lines || !water().frame) {
            return;
        }
        const auto written =
            outputs::writeTripGpx(path.toStdString(), *lines, *water().frame, water().name);
        tellIfWrong(written);
        if (written) {
            emit context_.open.happened(tr("The trip lies in %1.").arg(path));
        }
    }

    open_water::Basis basis_; ///< What the lines were proposed from.
    QSpinBox* minutes_ = nullptr;
    widgets::AmountField* speed_ = nullptr;
    QPushButton* propose_ = nullptr;
    QPushButton* save_ = nullptr;
    QLabel* old_ = nullptr;
    QLabel* trip_ = nullptr;
    QLabel* line_ = nullptr;
    widgets::PlainTable* table_ = nullptr;
};

} // namespace

SurveyStep* makeNextStep(SurveyContext context) {
    return new NextStep(context);
}

} // namespace days::survey_day

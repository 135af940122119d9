// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/survey_day/steps.h"
#include "app/days/survey_day/weed_notes_part.h"
#include "app/days/survey_day/weed_view.h"
#include "app/days/survey_day/zones_part.h"
#include "app/edits/change_settings.h"
#include "app/wording/typed_amount.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QSignalBlocker>
#include <QSlider>

#include <cmath>

namespace days::survey_day {

namespace {

constexpr int rowsShown = 7;

class WeedStep : public SurveyStep {
public:
    WeedStep(SurveyContext context, FileTaker& taker) : SurveyStep(context) {
        secchi_ = addAmount(
            {tr("Clarity"), tr("Depth at which a white disc (Secchi) vanishes"),
             [this](const QString& text) { return text.isEmpty() || secchiOf(text).has_value(); },
             tr("not known"), tr("a depth from 0.1 to 40 m, or nothing")},
            [this](const QString& text) {
                tellIfWrong(
                    edits::changeSettings(context_.open, tr("Set clarity"),
                                          [&](water::Settings& s) { s.secchi = secchiOf(text); }));
            });
        left_ = new QSlider(Qt::Horizontal, this);
        left_->setRange(0, 100);
        left_->setPageStep(10);
        share_ = new QLabel(this);
        share_->setMinimumWidth(fontMetrics().horizontalAdvance(QStringLiteral("100 %")));
        share_->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
        auto* across = new QWidget(this);
        auto* row = new QHBoxLayout(across);
        row->setContentsMargins(0, 0, 0, 0);
        row->addWidget(left_, 1);
        row->addWidget(share_);
        left_->setAccessibleName(tr("Weed still standing"));
        addField(tr("Weed still standing"), across, tr("How much of the summer's weed is left"));
        connect(left_, &QSlider::valueChanged, this, [this] { showShare(); });
        connect(left_, &QSlider::sliderReleased, this, [this] { setLeft(); });
        connect(left_, &QSlider::actionTriggered, this, [this](int action) {
            if (action != QAbstractSlider::SliderMove) {
                QMetaObject::invokeMethod(
                    this, [this] { setLeft(); }, Qt::QueuedConnection);
            }
        });
        growth_ = addWords();
        notes_ = new WeedNotesPart(context, taker);
        addWide(notes_);
        addHeading(tr("Beds and edges"));
        zones_ = new ZonesPart(context, chart::ZonesPicked::weed, rowsShown);
        addWide(zones_);
    }

protected:
    DayStepLine refreshFrom(const ViewInput& input) override {
        const WeedView view = weedViewOf(input);
        secchi_->showAmount(view.secchi);
        const QSignalBlocker quiet(left_);
        if (!left_->isSliderDown()) {
            left_->setValue(static_cast<int>(std::lround(100.0 * view.weedLeft)));
        }
        showShare();
        setWords(growth_, view.growth);
        notes_->refresh();
        zones_->refresh();
        return {view.state, input.isStale(water::Step::weed)};
    }

private:
    std::optional<units::Depth> secchiOf(const QString& text) const {
        const auto depth = wording::depthTyped(text, context_.preferences.units());
        return depth && depth->inMetres() >= 0.1 && depth->inMetres() <= 40.0 ? depth
                                                                              : std::nullopt;
    }
    void showShare() { share_->setText(wording::Words::share(left_->value() / 100.0)); }
    void setLeft() {
        const double left = left_->value() / 100.0;
        tellIfWrong(edits::changeSettings(context_.open, tr("Set weed still standing"),
                                          [&](water::Settings& s) { s.weedLeft = left; }));
    }
    widgets::AmountField* secchi_ = nullptr;
    QSlider* left_ = nullptr;
    QLabel* share_ = nullptr;
    QLabel* growth_ = nullptr;
    WeedNotesPart* notes_ = nullptr;
    ZonesPart* zones_ = nullptr;
};

} // namespace

SurveyStep* makeWeedStep(SurveyContext context, FileTaker& taker) {
    return new WeedStep(context, taker);
}

} // namespace days::survey_day

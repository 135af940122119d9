// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/tomorrow/beliefs_part.h"
#include "app/days/tomorrow/profiles_part.h"
#include "app/days/tomorrow/steps.h"
#include "app/days/tomorrow/tomorrow_view.h"
#include "app/edits/set_plan.h"
#include "app/wording/tongue.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QSignalBlocker>
#include <QSlider>
#include <QTimer>

#include <algorithm>
#include <cmath>

namespace days::tomorrow {

namespace {

constexpr int ticksPerWeight = 20;
constexpr int mostWeight = 2;
constexpr int ticksOfTry = 20;
/// The hand has come to rest.
constexpr int settle_ms = 300;

class WeightsStep : public DayStep {
public:
    explicit WeightsStep(DayContext context) : DayStep(context) {
        setWords(addWords(), tr("What you believe: how much each reason counts, from not at all to "
                                "twice. The log speaks for it or against it."));
        addTry();
        for (const marks::FactorKind kind : marks::allFactorKinds) {
            addWeight(kind);
            if (kind == marks::FactorKind::shelter) {
                liked_ = addWords();
            }
        }
        settle_.setSingleShot(true);
        settle_.setInterval(settle_ms);
        connect(&settle_, &QTimer::timeout, this, [this] { gesture_ = edits::Gesture::none; });
        addRow({makeButton(tr("Usual weights"), QString(), tr("Put every weight back to the usual"),
                           [this] {
                               edits::setPlan(context_.open, tr("Usual weights"),
                                              [](marks::Plan& plan) { plan.weights = {}; });
                           })});
        profiles_ = new ProfilesPart(context);
        addWide(profiles_);
        beliefs_ = new BeliefsPart(context);
        addWide(beliefs_);
    }

    DayStepLine refresh() override {
        const marks::Weights& weights = water().plan.weights;
        for (std::size_t i = 0; i < sliders_.size(); ++i) {
            const QSignalBlocker quiet(sliders_[i]);
            const double weight = weights.of(marks::allFactorKinds[i]);
            sliders_[i]->setValue(static_cast<int>(std::lround(weight * ticksPerWeight)));
            numbers_[i]->setText(wording::Tongue::number(weight, 2));
        }
        setWords(liked_, likedWavesWords(weights, words()));
        const QSignalBlocker quiet(try_);
        try_->setValue(static_cast<int>(std::lround(water().plan.tryNew * ticksOfTry)));
        profiles_->refresh();
        beliefs_->refresh();
        return {weightsLine(weights), false};
    }

private:
    void addTry() {
        try_ = new QSlider(Qt::Horizontal, this);
        try_->setRange(0, ticksOfTry);
        try_->setPageStep(ticksOfTry / 4);
        try_->setAccessibleName(tr("Try new water"));
        addField(tr("Known to new"), try_,
                 tr("Left: fish what is known. Right: try new water, and learn from it."));
        connect(try_, &QSlider::valueChanged, this, [this] { keep(); });
    }

    void addWeight(marks::FactorKind kind) {
        auto* holder = new QWidget(this);
        auto* row = new QHBoxLayout(holder);
        row->setContentsMargins(0, 0, 0, 0);
        auto* slider = new QSlider(Qt::Horizontal, holder);
        slider->setRange(0, mostWeight * ticksPerWeight);
        slider->setPageStep(ticksPerWeight / 4);
        slider->setAccessibleName(weightTitle(kind));
        auto* number = new QLabel(holder);
        number->setMinimumWidth(34);
        number->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
        row->addWidget(slider, 1);
        row->addWidget(number);
        holder->setFocusProxy(slider);
        addField(weightTitle(kind), holder, factorMeaning(kind));
        sliders_.push_back(slider);
        numbers_.push_back(number);
        connect(slider, &QSlider::valueChanged, this, [this, number](int ticks) {
            number->setText(
                wording::Tongue::number(static_cast<double>(ticks) / ticksPerWeight, 2));
            keep();
        });
    }

    /// With every tick, so that the list follows the hand; until it rests, as one act.
    void keep() {
        if (gesture_ == edits::Gesture::none) {
            gesture_ = edits::newGesture();
        }
        settle_.start();
        edits::setPlan(
            context_.open, tr("Weigh reasons"),
            [this](marks::Plan& plan) {
                takeMoved(plan.tryNew, *try_, ticksOfTry);
                for (std::size_t i = 0; i < sliders_.size(); ++i) {
                    double weight = plan.weights.of(marks::allFactorKinds[i]);
                    takeMoved(weight, *sliders_[i], ticksPerWeight);
                    plan.weights.set(marks::allFactorKinds[i], weight);
                }
            },
            gesture_);
    }

    /// What lies between two ticks, or beyond the last, stays as it is until its own slider is
    /// moved.
    static void takeMoved(double& amount, const QSlider& slider, int ticksPerOne) {
        const long shown =
            std::clamp(std::lround(amount * ticksPerOne), static_cast<long>(slider.minimum()),
                       static_cast<long>(slider.maximum()));
        if (shown != slider.value()) {
            amount = static_cast<double>(slider.value()) / ticksPerOne;
        }
    }

    QSlider* try_ = nullptr;
    QLabel* liked_ = nullptr;
    std::vector<QSlider*> sliders_;
    std::vector<QLabel*> numbers_;
    QTimer settle_;
    edits::Gesture gesture_ = edits::Gesture::none;
    ProfilesPart* profiles_ = nullptr;
    BeliefsPart* beliefs_ = nullptr;
};

} // namespace

DayStep* makeWeightsStep(DayContext context) {
    return new WeightsStep(context);
}

} // namespace days::tomorrow

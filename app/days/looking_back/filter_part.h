// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/days/day_step.h"
#include "app/days/looking_back/log_question.h"

class QComboBox;
class QHBoxLayout;

namespace days::looking_back {

/// Which stays and which fish of the log count.
class FilterPart : public DayStep {
    Q_OBJECT
public:
    FilterPart(DayContext context, LogQuestion& question);

    DayStepLine refresh() override;

private:
    void layFish();
    void layStays();
    void layDays();
    QComboBox* makeBox(const QString& name, QHBoxLayout& row,
                       std::string water::ReviewQuestion::*member);
    widgets::AmountField* makeAmount(const QString& name, const QString& help,
                                     const QString& whenEmpty, QHBoxLayout& row,
                                     const std::function<bool(const QString&)>& isRight,
                                     const std::function<void(const QString&)>& enter);
    widgets::AmountField* addDay(const QString& name, const QString& whenEmpty, QHBoxLayout& row,
                                 std::optional<units::Day> water::ReviewQuestion::*member);
    QHBoxLayout* addPair(const QString& label, const QString& help);

    /// Shows what is asked, whoever asked it.
    void showQuestion();

    LogQuestion& question_;
    widgets::AmountField* leastWeight_ = nullptr;
    widgets::AmountField* from_ = nullptr;
    widgets::AmountField* to_ = nullptr;
    QComboBox* species_ = nullptr;
    QComboBox* bait_ = nullptr;
    QLabel* wrong_ = nullptr;
};

} // namespace days::looking_back

// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/looking_back/give_away.h"
#include "app/days/looking_back/log_digest.h"
#include "app/days/looking_back/log_question.h"
#include "app/days/looking_back/log_view.h"
#include "app/days/looking_back/season_view.h"
#include "app/days/looking_back/steps.h"
#include "app/days/looking_back/summary_view.h"
#include "app/wording/tongue.h"

#include <QLabel>
#include <QPushButton>

namespace days::looking_back {

namespace {

class SummaryStep : public DayStep {
public:
    SummaryStep(DayContext context, LogQuestion& question, const std::function<void()>& writeUp)
        : DayStep(context), question_(question) {
        span_ = addWords();
        asked_ = addWarning();
        said_ = new QLabel(this);
        said_->setWordWrap(true);
        said_->setTextFormat(Qt::PlainText);
        said_->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
        said_->setAccessibleName(tr("What the log comes to"));
        addWide(said_);
        addRow({makeButton(tr("Write up the day"), {},
                           tr("Go through the marks of the sheet (Ctrl+D)"), writeUp),
                copy_ = makeButton(tr("Copy"), {}, tr("The sentences, to be pasted"),
                                   [this] { copy(); })});
        connect(&question_, &LogQuestion::changed, this, [this] {
            counted_.reset();
            emit lineChanged();
        });
    }

    DayStepLine refresh() override {
        const logbook::LogSum& sum = sumOf(water().log, water().clock);
        setWords(span_, spanLine(sum));
        setWords(asked_, askedWords(question_.question(), words()));
        if (isVisibleTo(parentWidget())) {
            ask(); // The closed step says nothing of it.
        }
        return {logLine(sum), false};
    }

protected:
    void showEvent(QShowEvent* event) override {
        DayStep::showEvent(event);
        emit lineChanged();
    }

private:
    /// Counts again where the log, the sections or the question changed.
    void ask() {
        const auto sections = context_.open.derived().sections;
        if (counted_ == context_.open.water() && countedSections_ == sections) {
            return;
        }
        counted_ = context_.open.water();
        countedSections_ = sections;
        if (counted_->log.empty()) {
            show({tr("Nothing logged yet. Write up a day, and the log begins to tell.")});
            return;
        }
        // The sentences of before are pale until then, and nobody is given them.
        said_->setEnabled(false);
        copy_->setEnabled(false);
        startJob<QStringList>(
            tr("Summing up the log"),
            [water = counted_, derived = context_.open.derived(), question = question_.question(),
             words = words()](base::Progress& progress) {
                return inShort(*water, derived, question, words, progress);
            },
            [this](const base::Result<QStringList>& said) {
                show(said ? *said : QStringList(wording::Tongue::sentence(said.error())));
            });
    }

    void show(const QStringList& sentences) {
        said_->setText(sentences.join(QStringLiteral("\n\n")));
        said_->setEnabled(true);
        copy_->setEnabled(!counted_->log.empty());
    }

    void copy() {
        copyToClipboard(QStringList{span_->text(), said_->text()}.join(QStringLiteral("\n\n")));
        emit context_.open.happened(tr("The sentences can be pasted now."));
    }

    LogQuestion& question_;
    std::shared_ptr<const water::Water> counted_;
    std::shared_ptr<const sections::SectionMap> countedSections_;
    QLabel* span_ = nullptr;
    QLabel* asked_ = nullptr;
    QLabel* said_ = nullptr;
    QPushButton* copy_ = nullptr;
};

} // namespace

DayStep* makeSummaryStep(DayContext context, LogQuestion& question,
                         const std::function<void()>& writeUp) {
    return new SummaryStep(context, question, writeUp);
}

} // namespace days::looking_back

// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window/go_back.h"

#include "app/chart/palette.h"
#include "app/open_water/water_file.h"
#include "app/paper/small_picture.h"
#include "app/wording/copy_words.h"

#include <QDialogButtonBox>
#include <QFileInfo>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace window {

namespace {

constexpr QSize cardSize{208, 140};
constexpr std::size_t mostCards = 40;

std::optional<store::CopyCounts> countsOf(const std::filesystem::path& file) {
    const auto counts = store::countsIn(file);
    return counts ? std::optional(*counts) : std::nullopt;
}

} // namespace

GoBack::GoBack(const store::Copies& copies, const QString& water, const QString& why,
               chart::Inks inks, QWidget* parent)
    : QDialog(parent), copies_(copies.of(water.toStdString())), inks_(inks) {
    copies_.resize(std::min(copies_.size(), mostCards));
    setWindowTitle(tr("Go back"));
    resize(960, 600);
    auto* column = new QVBoxLayout(this);
    auto* said = new QLabel(this);
    said->setTextFormat(Qt::PlainText);
    said->setWordWrap(true);
    const QString name = QFileInfo(water).fileName();
    const QString what = copies_.empty()
                             ? tr("There is no copy of %1.").arg(name)
                             : tr("Copies of %1. Going back to one keeps the water as it is now as "
                                  "one more copy.")
                                   .arg(name);
    said->setText(why.isEmpty() ? what : why + QStringLiteral("\n") + what);
    column->addWidget(said);

    list_ = new QListWidget(this);
    list_->setAccessibleName(tr("Copies"));
    list_->setViewMode(QListView::IconMode);
    list_->setIconSize(cardSize);
    list_->setGridSize(cardSize + QSize(24, 76));
    list_->setResizeMode(QListView::Adjust);
    list_->setMovement(QListView::Static);
    list_->setWordWrap(true);
    column->addWidget(list_, 1);

    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel, this);
    QPushButton* back = buttons->addButton(tr("Go back to this one"), QDialogButtonBox::AcceptRole);
    back->setEnabled(false);
    if (!why.isEmpty()) {
        QPushButton* rescue = buttons->addButton(tr("Rescue what can be read into a new file..."),
                                                 QDialogButtonBox::ActionRole);
        connect(rescue, &QPushButton::clicked, this, [this] {
            wantsRescue_ = true;
            reject();
        });
    }
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(list_, &QListWidget::itemSelectionChanged, back,
            [this, back] { back->setEnabled(!list_->selectedItems().isEmpty()); });
    column->addWidget(buttons);
    for (std::size_t i = 0; i < copies_.size(); ++i) {
        QPixmap empty(cardSize);
        empty.fill(chart::Palette::of(inks_).paper);
        new QListWidgetItem(QIcon(empty), wording::takenWords(copies_[i]), list_);
        startCard(i, water);
    }
}

GoBack::Card GoBack::cardOf(const store::Copy& copy, const std::optional<store::CopyCounts>& now,
                            chart::Inks inks, base::Progress& progress) {
    Card card;
    card.words = wording::takenWords(copy) + QStringLiteral("\n") +
                 wording::differenceWords(countsOf(copy.file), now);
    if (const auto look = open_water::firstLookAt(copy.file, progress)) {
        card.picture = paper::renderSmallPicture(look->water, look->kept, cardSize, inks);
    }
    return card;
}

void GoBack::startCard(std::size_t at, const QString& water) {
    jobs_.start<Card>(
        tr("Copy %1").arg(at + 1),
        [copy = copies_[at], water = water.toStdString(), inks = inks_](base::Progress& progress)
            -> base::Result<Card> { return cardOf(copy, countsOf(water), inks, progress); },
        [this, at](const base::Result<Card>& card) {
            QListWidgetItem* item = card ? list_->item(static_cast<int>(at)) : nullptr;
            if (item == nullptr) {
                return;
            }
            item->setText(card->words);
            item->setToolTip(card->words);
            if (!card->picture.isNull()) {
                item->setIcon(QIcon(QPixmap::fromImage(card->picture)));
            }
        });
}

std::optional<store::Copy> GoBack::chosen() const {
    const int row = list_->currentRow();
    const bool isChosen =
        result() == QDialog::Accepted && row >= 0 && !list_->selectedItems().isEmpty();
    return isChosen ? std::optional(copies_.at(static_cast<std::size_t>(row))) : std::nullopt;
}

} // namespace window

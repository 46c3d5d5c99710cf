/** The word list for German; its templates are those in `templates/de`. */
import type { Words } from './words.ts';

export const german: Words = {
  language: 'de',
  direction: { none: 'keine', minus: 'minus', plus: 'plus' },
  grade: { primary: 'Zuerst', alternate: 'Dann', contingency: 'Dann', emergency: 'Ohne Funk' },
  heard: { readable: 'lesbar', weak: 'schwach', broken: 'zerhackt', nothing: 'nichts gehört' },
  field: {
    receive: 'Empfang',
    transmit: 'Senden',
    step: 'Schrittweite',
    mode: 'Betriebsart',
    'offset-direction': 'Ablage-Richtung',
    offset: 'Ablage',
    'tone-kind': 'Tonart',
    tone: 'Ton',
    'receive-tone': 'Empfangston',
    width: 'Bandbreite',
    power: 'Leistung',
    name: 'Name',
  },
  dayShort: ['Mo', 'Di', 'Mi', 'Do', 'Fr', 'Sa', 'So'],
  everyDay: 'täglich',
  weekdays: 'Mo bis Fr',
  weekends: 'Sa, So',
  utc: 'UTC',
  hours: 'Uhr',
  listenOnly: 'nur hören',
  none: 'keine',
  toneKind: { ctcss: 'CTCSS', dcs: 'DCS', none: 'kein' },
  flip: { 'long-edge': 'lange Kante', 'short-edge': 'kurze Kante' },
  monthShort: [
    'Jan.',
    'Feb.',
    'März',
    'Apr.',
    'Mai',
    'Juni',
    'Juli',
    'Aug.',
    'Sept.',
    'Okt.',
    'Nov.',
    'Dez.',
  ],
  dayAndMonth: (day, month) => `${day}. ${month}`,
  untried: 'unerprobt',
  tried: (date, heard) =>
    `erprobt ${date}: ${heard.map(({ place, heard: how }) => `${place} ${how}`).join(', ')}`,
  toneBack: (tone) => `Rückton ${tone}`,
  verdict: { solid: 'sicher', likely: 'wahrscheinlich', doubtful: 'zweifelhaft', no: 'nein' },
  severity: { error: 'Fehler', warning: 'Warnung', note: 'Hinweis' },
  standing: { 'off the air': 'ohne Funk', 'cut off': 'abgeschnitten' },
  thing: {
    place: 'Ort',
    asset: 'Anlage',
    repeater: 'Relais',
    digipeater: 'Digipeater',
    mailbox: 'Mailbox',
    channel: 'Kanal',
    member: 'Mitglied',
  },
  atOnce: 'sofort',
  after: (length) => `nach ${length}`,
  needs: (things, backup) =>
    things.length === 0
      ? `läuft ${backup} allein`
      : `${things.join(', ')}${backup === '' ? '' : `; läuft ${backup} ohne`}`,
  rungWord: 'Stufe',
  figure: {
    day: 'Die Runden eines Tages auf einem Streifen von 24 Stunden; die Tabelle darunter sagt dasselbe in Worten.',
    net: 'An welchen Stationen und Kanälen die Mitglieder hängen: erste Anrufe mit dicken, spätere Stufen mit dünnen Linien; die Leitern sagen dasselbe in Worten.',
    bands:
      'Jeder Kanal auf der Skala seines Bandes, ein Punkt für Empfang, ein Ring für Senden; die Kanalliste sagt dasselbe in Zahlen.',
    profile: (from, to, clearance) => `Das Gelände von ${from} bis ${to}. ${clearance}`,
    code: 'Ein Code für Telefone, der Kanalliste und Plankennung wiederholt.',
  },
  script: {
    open: (title, net, channel) =>
      `„Hier [dein Rufzeichen], Leitstelle von ${title}: ${net} auf ${channel}.“`,
    urgent: '„Wer Dringendes hat, bitte jetzt.“',
    check: 'Wer an der Reihe ist, liest die Plankennung von der eigenen Karte; mit dieser Seite vergleichen.',
    missed: (ladder) => `Wer nicht antwortet: noch zweimal rufen, dann die Leiter „${ladder}“ beginnen.`,
    close: (net) => `„${net} ist beendet. Hier [dein Rufzeichen], Ende.“`,
  },
  testSheet: {
    title: 'Prüfblatt für den Drucker',
    front:
      'Dieses Blatt mit 100 % beidseitig drucken, gewendet wie die Karten. Das Lineal muss 100 mm messen. Dann gegen das Licht halten und die andere Seite lesen.',
    back: 'Gegen das Licht fällt jedes Kreuz der Vorderseite auf eine Skala: ablesen, wie weit rechts und wie weit unten. Die Mitte der Werte in den Plan schreiben, unter cards, back-shift: [rechts, unten], in mm.',
  },
  calls: (count) => (count === 1 ? '1 Anruf' : `${count} Anrufe`),
  from: (place) => `ab ${place}`,
  mailbox: (name, through) =>
    `Nachricht an ${name}${through.length === 0 ? '' : ` über ${through.join(', ')}`}`,
  meet: (place, when) => `Treffen: ${place}${when === undefined ? '' : `, ${when}`}`,
  recurring: (rrule) => rrule.toLowerCase().replaceAll(';', ', '),
};

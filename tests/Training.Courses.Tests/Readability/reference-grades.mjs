// Grades English texts without any code of ours: syllables from the CMU Pronouncing Dictionary, by rule where it lacks a word.
// Reads {name: [paragraph, …]} from standard input; writes {grades: {name: grade}, syllables: {word: count}}.
import { readFileSync } from 'node:fs'
import { dictionary } from 'cmu-pronouncing-dictionary'
import { fleschKincaid } from 'flesch-kincaid'
import { syllable } from 'syllable'

// In the dictionary each vowel carries its stress as a digit. What has no letters is a number and counts as one.
const spoken = part => dictionary[part]?.match(/\d/g).length ?? Math.max(1, syllable(part))
const syllables = {}
const grades = {}

for (const [name, paragraphs] of Object.entries(JSON.parse(readFileSync(0, 'utf8')))) {
  const counts = { sentence: 0, word: 0, syllable: 0 }
  for (const sentence of paragraphs.flatMap(paragraph => paragraph.split(/(?<=[.!?…:;])\s/))) {
    const words = sentence.toLowerCase().replaceAll('’', "'").split(/\s+/)
      .map(token => token.replace(/^[^\p{L}\p{N}]+|[^\p{L}\p{N}]+$/gu, '')).filter(token => token !== '')
    if (words.length > 0) counts.sentence++
    for (const word of words) {
      syllables[word] ??= /\p{L}/u.test(word) ? word.split('-').reduce((sum, part) => sum + spoken(part), 0) : 1
      counts.word++
      counts.syllable += syllables[word]
    }
  }
  grades[name] = fleschKincaid(counts)
}

console.log(JSON.stringify({ grades, syllables }))

import { useState } from 'react';
import { downloadBlob } from '../state/storage/downloadText';
import './saveChart.css';

interface SaveChartProps {
  /** What the file is called, in words. */
  readonly name: string;
  /** Makes the picture; `day` is today's date in words, for its title. */
  readonly svg: (day: string) => string;
}

/** A picture or chart as a file: SVG, or PNG at twice its size. */
export function SaveChart({ name, svg }: SaveChartProps) {
  const [problem, setProblem] = useState('');
  const text = (): string => svg(today());
  return (
    <p className="save-chart">
      <button
        type="button"
        className="plain-action"
        onClick={() => {
          downloadBlob(`${fileWords(name)}.svg`, new Blob([text()], { type: 'image/svg+xml' }));
        }}
      >
        Save as SVG
      </button>
      <button
        type="button"
        className="plain-action"
        onClick={() => {
          setProblem('');
          pngOf(text()).then(
            (png) => {
              downloadBlob(`${fileWords(name)}.png`, png);
            },
            () => {
              setProblem('This browser could not make a PNG of it; the SVG has the same picture.');
            },
          );
        }}
      >
        Save as PNG
      </button>
      <span role="status">{problem}</span>
    </p>
  );
}

function today(): string {
  return new Date().toLocaleDateString('en-GB', { day: 'numeric', month: 'long', year: 'numeric' });
}

const mostLetters = 60;

function fileWords(name: string): string {
  const words = name
    .normalize('NFC')
    .replace(/[^\p{L}\p{M}\p{N}_-]+/gu, ' ')
    .trim();
  return Array.from(words).slice(0, mostLetters).join('').trim() || 'picture';
}

const pngScale = 2;

/** Draws an SVG at twice its size. */
async function pngOf(svg: string): Promise<Blob> {
  const address = URL.createObjectURL(new Blob([svg], { type: 'image/svg+xml' }));
  try {
    const image = new Image();
    image.src = address;
    await image.decode();
    const canvas = document.createElement('canvas');
    canvas.width = pngScale * image.width;
    canvas.height = pngScale * image.height;
    const context = canvas.getContext('2d');
    if (context === null) throw new Error('no canvas');
    context.drawImage(image, 0, 0, canvas.width, canvas.height);
    return await new Promise((resolve, reject) => {
      canvas.toBlob((blob) => {
        if (blob === null) reject(new Error('no picture'));
        else resolve(blob);
      }, 'image/png');
    });
  } finally {
    URL.revokeObjectURL(address);
  }
}

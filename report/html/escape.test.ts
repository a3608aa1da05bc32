import { describe, expect, it } from 'vitest';
import { escaped, html } from './escape.ts';

describe('html', () => {
  it('escapes what is put in, in elements and attributes', () => {
    const hostile = `"><script>alert('1')</script>&`;
    expect(html`<p title="${hostile}">${hostile}</p>`.markup).toBe(
      '<p title="&quot;&gt;&lt;script&gt;alert(&#39;1&#39;)&lt;/script&gt;&amp;">&quot;&gt;&lt;script&gt;alert(&#39;1&#39;)&lt;/script&gt;&amp;</p>',
    );
  });

  it('takes markup as it is, alone and in lists', () => {
    expect(html`<ul>${[html`<li>${1}</li>`, html`<li>${'<'}</li>`]}</ul>`.markup).toBe(
      '<ul><li>1</li><li>&lt;</li></ul>',
    );
  });

  it('shows control characters rather than passing them on', () => {
    expect(escaped('a\u0000b\u001b')).toBe('a\ufffdb\ufffd');
  });
});

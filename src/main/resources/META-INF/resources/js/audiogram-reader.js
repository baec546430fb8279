var T=globalThis,O=T.ShadowRoot&&(T.ShadyCSS===void 0||T.ShadyCSS.nativeShadow)&&"adoptedStyleSheets"in Document.prototype&&"replace"in CSSStyleSheet.prototype,L=Symbol(),ae=new WeakMap,S=class{constructor(e,t,s){if(this._$cssResult$=!0,s!==L)throw Error("CSSResult is not constructable. Use `unsafeCSS` or `css` instead.");this.cssText=e,this.t=t}get styleSheet(){let e=this.o,t=this.t;if(O&&e===void 0){let s=t!==void 0&&t.length===1;s&&(e=ae.get(t)),e===void 0&&((this.o=e=new CSSStyleSheet).replaceSync(this.cssText),s&&ae.set(t,e))}return e}toString(){return this.cssText}},he=n=>new S(typeof n=="string"?n:n+"",void 0,L),D=(n,...e)=>{let t=n.length===1?n[0]:e.reduce((s,i,r)=>s+(o=>{if(o._$cssResult$===!0)return o.cssText;if(typeof o=="number")return o;throw Error("Value passed to 'css' function must be a 'css' function result: "+o+". Use 'unsafeCSS' to pass non-literal values, but take care to ensure page security.")})(i)+n[r+1],n[0]);return new S(t,n,L)},de=(n,e)=>{if(O)n.adoptedStyleSheets=e.map(t=>t instanceof CSSStyleSheet?t:t.styleSheet);else for(let t of e){let s=document.createElement("style"),i=T.litNonce;i!==void 0&&s.setAttribute("nonce",i),s.textContent=t.cssText,n.appendChild(s)}},j=O?n=>n:n=>n instanceof CSSStyleSheet?(e=>{let t="";for(let s of e.cssRules)t+=s.cssText;return he(t)})(n):n;var{is:Me,defineProperty:ke,getOwnPropertyDescriptor:Ue,getOwnPropertyNames:Te,getOwnPropertySymbols:Oe,getPrototypeOf:He}=Object,H=globalThis,le=H.trustedTypes,Ne=le?le.emptyScript:"",ze=H.reactiveElementPolyfillSupport,x=(n,e)=>n,B={toAttribute(n,e){switch(e){case Boolean:n=n?Ne:null;break;case Object:case Array:n=n==null?n:JSON.stringify(n)}return n},fromAttribute(n,e){let t=n;switch(e){case Boolean:t=n!==null;break;case Number:t=n===null?null:Number(n);break;case Object:case Array:try{t=JSON.parse(n)}catch{t=null}}return t}},pe=(n,e)=>!Me(n,e),ce={attribute:!0,type:String,converter:B,reflect:!1,useDefault:!1,hasChanged:pe};Symbol.metadata??=Symbol("metadata"),H.litPropertyMetadata??=new WeakMap;var f=class extends HTMLElement{static addInitializer(e){this._$Ei(),(this.l??=[]).push(e)}static get observedAttributes(){return this.finalize(),this._$Eh&&[...this._$Eh.keys()]}static createProperty(e,t=ce){if(t.state&&(t.attribute=!1),this._$Ei(),this.prototype.hasOwnProperty(e)&&((t=Object.create(t)).wrapped=!0),this.elementProperties.set(e,t),!t.noAccessor){let s=Symbol(),i=this.getPropertyDescriptor(e,s,t);i!==void 0&&ke(this.prototype,e,i)}}static getPropertyDescriptor(e,t,s){let{get:i,set:r}=Ue(this.prototype,e)??{get(){return this[t]},set(o){this[t]=o}};return{get:i,set(o){let d=i?.call(this);r?.call(this,o),this.requestUpdate(e,d,s)},configurable:!0,enumerable:!0}}static getPropertyOptions(e){return this.elementProperties.get(e)??ce}static _$Ei(){if(this.hasOwnProperty(x("elementProperties")))return;let e=He(this);e.finalize(),e.l!==void 0&&(this.l=[...e.l]),this.elementProperties=new Map(e.elementProperties)}static finalize(){if(this.hasOwnProperty(x("finalized")))return;if(this.finalized=!0,this._$Ei(),this.hasOwnProperty(x("properties"))){let t=this.properties,s=[...Te(t),...Oe(t)];for(let i of s)this.createProperty(i,t[i])}let e=this[Symbol.metadata];if(e!==null){let t=litPropertyMetadata.get(e);if(t!==void 0)for(let[s,i]of t)this.elementProperties.set(s,i)}this._$Eh=new Map;for(let[t,s]of this.elementProperties){let i=this._$Eu(t,s);i!==void 0&&this._$Eh.set(i,t)}this.elementStyles=this.finalizeStyles(this.styles)}static finalizeStyles(e){let t=[];if(Array.isArray(e)){let s=new Set(e.flat(1/0).reverse());for(let i of s)t.unshift(j(i))}else e!==void 0&&t.push(j(e));return t}static _$Eu(e,t){let s=t.attribute;return s===!1?void 0:typeof s=="string"?s:typeof e=="string"?e.toLowerCase():void 0}constructor(){super(),this._$Ep=void 0,this.isUpdatePending=!1,this.hasUpdated=!1,this._$Em=null,this._$Ev()}_$Ev(){this._$ES=new Promise(e=>this.enableUpdating=e),this._$AL=new Map,this._$E_(),this.requestUpdate(),this.constructor.l?.forEach(e=>e(this))}addController(e){(this._$EO??=new Set).add(e),this.renderRoot!==void 0&&this.isConnected&&e.hostConnected?.()}removeController(e){this._$EO?.delete(e)}_$E_(){let e=new Map,t=this.constructor.elementProperties;for(let s of t.keys())this.hasOwnProperty(s)&&(e.set(s,this[s]),delete this[s]);e.size>0&&(this._$Ep=e)}createRenderRoot(){let e=this.shadowRoot??this.attachShadow(this.constructor.shadowRootOptions);return de(e,this.constructor.elementStyles),e}connectedCallback(){this.renderRoot??=this.createRenderRoot(),this.enableUpdating(!0),this._$EO?.forEach(e=>e.hostConnected?.())}enableUpdating(e){}disconnectedCallback(){this._$EO?.forEach(e=>e.hostDisconnected?.())}attributeChangedCallback(e,t,s){this._$AK(e,s)}_$ET(e,t){let s=this.constructor.elementProperties.get(e),i=this.constructor._$Eu(e,s);if(i!==void 0&&s.reflect===!0){let r=(s.converter?.toAttribute!==void 0?s.converter:B).toAttribute(t,s.type);this._$Em=e,r==null?this.removeAttribute(i):this.setAttribute(i,r),this._$Em=null}}_$AK(e,t){let s=this.constructor,i=s._$Eh.get(e);if(i!==void 0&&this._$Em!==i){let r=s.getPropertyOptions(i),o=typeof r.converter=="function"?{fromAttribute:r.converter}:r.converter?.fromAttribute!==void 0?r.converter:B;this._$Em=i;let d=o.fromAttribute(t,r.type);this[i]=d??this._$Ej?.get(i)??d,this._$Em=null}}requestUpdate(e,t,s,i=!1,r){if(e!==void 0){let o=this.constructor;if(i===!1&&(r=this[e]),s??=o.getPropertyOptions(e),!((s.hasChanged??pe)(r,t)||s.useDefault&&s.reflect&&r===this._$Ej?.get(e)&&!this.hasAttribute(o._$Eu(e,s))))return;this.C(e,t,s)}this.isUpdatePending===!1&&(this._$ES=this._$EP())}C(e,t,{useDefault:s,reflect:i,wrapped:r},o){s&&!(this._$Ej??=new Map).has(e)&&(this._$Ej.set(e,o??t??this[e]),r!==!0||o!==void 0)||(this._$AL.has(e)||(this.hasUpdated||s||(t=void 0),this._$AL.set(e,t)),i===!0&&this._$Em!==e&&(this._$Eq??=new Set).add(e))}async _$EP(){this.isUpdatePending=!0;try{await this._$ES}catch(t){Promise.reject(t)}let e=this.scheduleUpdate();return e!=null&&await e,!this.isUpdatePending}scheduleUpdate(){return this.performUpdate()}performUpdate(){if(!this.isUpdatePending)return;if(!this.hasUpdated){if(this.renderRoot??=this.createRenderRoot(),this._$Ep){for(let[i,r]of this._$Ep)this[i]=r;this._$Ep=void 0}let s=this.constructor.elementProperties;if(s.size>0)for(let[i,r]of s){let{wrapped:o}=r,d=this[i];o!==!0||this._$AL.has(i)||d===void 0||this.C(i,void 0,r,d)}}let e=!1,t=this._$AL;try{e=this.shouldUpdate(t),e?(this.willUpdate(t),this._$EO?.forEach(s=>s.hostUpdate?.()),this.update(t)):this._$EM()}catch(s){throw e=!1,this._$EM(),s}e&&this._$AE(t)}willUpdate(e){}_$AE(e){this._$EO?.forEach(t=>t.hostUpdated?.()),this.hasUpdated||(this.hasUpdated=!0,this.firstUpdated(e)),this.updated(e)}_$EM(){this._$AL=new Map,this.isUpdatePending=!1}get updateComplete(){return this.getUpdateComplete()}getUpdateComplete(){return this._$ES}shouldUpdate(e){return!0}update(e){this._$Eq&&=this._$Eq.forEach(t=>this._$ET(t,this[t])),this._$EM()}updated(e){}firstUpdated(e){}};f.elementStyles=[],f.shadowRootOptions={mode:"open"},f[x("elementProperties")]=new Map,f[x("finalized")]=new Map,ze?.({ReactiveElement:f}),(H.reactiveElementVersions??=[]).push("2.1.2");var J=globalThis,ue=n=>n,N=J.trustedTypes,fe=N?N.createPolicy("lit-html",{createHTML:n=>n}):void 0,ve="$lit$",g=`lit$${Math.random().toFixed(9).slice(2)}$`,Ae="?"+g,Le=`<${Ae}>`,v=document,C=()=>v.createComment(""),R=n=>n===null||typeof n!="object"&&typeof n!="function",X=Array.isArray,De=n=>X(n)||typeof n?.[Symbol.iterator]=="function",I=`[ 	
\f\r]`,P=/<(?:(!--|\/[^a-zA-Z])|(\/?[a-zA-Z][^>\s]*)|(\/?$))/g,$e=/-->/g,ge=/>/g,m=RegExp(`>|${I}(?:([^\\s"'>=/]+)(${I}*=${I}*(?:[^ 	
\f\r"'\`<>=]|("|')|))|$)`,"g"),ye=/'/g,me=/"/g,be=/^(?:script|style|textarea|title)$/i,Y=n=>(e,...t)=>({_$litType$:n,strings:e,values:t}),Z=Y(1),Qe=Y(2),et=Y(3),A=Symbol.for("lit-noChange"),c=Symbol.for("lit-nothing"),_e=new WeakMap,_=v.createTreeWalker(v,129);function we(n,e){if(!X(n)||!n.hasOwnProperty("raw"))throw Error("invalid template strings array");return fe!==void 0?fe.createHTML(e):e}var je=(n,e)=>{let t=n.length-1,s=[],i,r=e===2?"<svg>":e===3?"<math>":"",o=P;for(let d=0;d<t;d++){let a=n[d],l,p,h=-1,u=0;for(;u<a.length&&(o.lastIndex=u,p=o.exec(a),p!==null);)u=o.lastIndex,o===P?p[1]==="!--"?o=$e:p[1]!==void 0?o=ge:p[2]!==void 0?(be.test(p[2])&&(i=RegExp("</"+p[2],"g")),o=m):p[3]!==void 0&&(o=m):o===m?p[0]===">"?(o=i??P,h=-1):p[1]===void 0?h=-2:(h=o.lastIndex-p[2].length,l=p[1],o=p[3]===void 0?m:p[3]==='"'?me:ye):o===me||o===ye?o=m:o===$e||o===ge?o=P:(o=m,i=void 0);let $=o===m&&n[d+1].startsWith("/>")?" ":"";r+=o===P?a+Le:h>=0?(s.push(l),a.slice(0,h)+ve+a.slice(h)+g+$):a+g+(h===-2?d:$)}return[we(n,r+(n[t]||"<?>")+(e===2?"</svg>":e===3?"</math>":"")),s]},M=class n{constructor({strings:e,_$litType$:t},s){let i;this.parts=[];let r=0,o=0,d=e.length-1,a=this.parts,[l,p]=je(e,t);if(this.el=n.createElement(l,s),_.currentNode=this.el.content,t===2||t===3){let h=this.el.content.firstChild;h.replaceWith(...h.childNodes)}for(;(i=_.nextNode())!==null&&a.length<d;){if(i.nodeType===1){if(i.hasAttributes())for(let h of i.getAttributeNames())if(h.endsWith(ve)){let u=p[o++],$=i.getAttribute(h).split(g),U=/([.?@])?(.*)/.exec(u);a.push({type:1,index:r,name:U[2],strings:$,ctor:U[1]==="."?K:U[1]==="?"?V:U[1]==="@"?W:w}),i.removeAttribute(h)}else h.startsWith(g)&&(a.push({type:6,index:r}),i.removeAttribute(h));if(be.test(i.tagName)){let h=i.textContent.split(g),u=h.length-1;if(u>0){i.textContent=N?N.emptyScript:"";for(let $=0;$<u;$++)i.append(h[$],C()),_.nextNode(),a.push({type:2,index:++r});i.append(h[u],C())}}}else if(i.nodeType===8)if(i.data===Ae)a.push({type:2,index:r});else{let h=-1;for(;(h=i.data.indexOf(g,h+1))!==-1;)a.push({type:7,index:r}),h+=g.length-1}r++}}static createElement(e,t){let s=v.createElement("template");return s.innerHTML=e,s}};function b(n,e,t=n,s){if(e===A)return e;let i=s!==void 0?t._$Co?.[s]:t._$Cl,r=R(e)?void 0:e._$litDirective$;return i?.constructor!==r&&(i?._$AO?.(!1),r===void 0?i=void 0:(i=new r(n),i._$AT(n,t,s)),s!==void 0?(t._$Co??=[])[s]=i:t._$Cl=i),i!==void 0&&(e=b(n,i._$AS(n,e.values),i,s)),e}var q=class{constructor(e,t){this._$AV=[],this._$AN=void 0,this._$AD=e,this._$AM=t}get parentNode(){return this._$AM.parentNode}get _$AU(){return this._$AM._$AU}u(e){let{el:{content:t},parts:s}=this._$AD,i=(e?.creationScope??v).importNode(t,!0);_.currentNode=i;let r=_.nextNode(),o=0,d=0,a=s[0];for(;a!==void 0;){if(o===a.index){let l;a.type===2?l=new k(r,r.nextSibling,this,e):a.type===1?l=new a.ctor(r,a.name,a.strings,this,e):a.type===6&&(l=new F(r,this,e)),this._$AV.push(l),a=s[++d]}o!==a?.index&&(r=_.nextNode(),o++)}return _.currentNode=v,i}p(e){let t=0;for(let s of this._$AV)s!==void 0&&(s.strings!==void 0?(s._$AI(e,s,t),t+=s.strings.length-2):s._$AI(e[t])),t++}},k=class n{get _$AU(){return this._$AM?._$AU??this._$Cv}constructor(e,t,s,i){this.type=2,this._$AH=c,this._$AN=void 0,this._$AA=e,this._$AB=t,this._$AM=s,this.options=i,this._$Cv=i?.isConnected??!0}get parentNode(){let e=this._$AA.parentNode,t=this._$AM;return t!==void 0&&e?.nodeType===11&&(e=t.parentNode),e}get startNode(){return this._$AA}get endNode(){return this._$AB}_$AI(e,t=this){e=b(this,e,t),R(e)?e===c||e==null||e===""?(this._$AH!==c&&this._$AR(),this._$AH=c):e!==this._$AH&&e!==A&&this._(e):e._$litType$!==void 0?this.$(e):e.nodeType!==void 0?this.T(e):De(e)?this.k(e):this._(e)}O(e){return this._$AA.parentNode.insertBefore(e,this._$AB)}T(e){this._$AH!==e&&(this._$AR(),this._$AH=this.O(e))}_(e){this._$AH!==c&&R(this._$AH)?this._$AA.nextSibling.data=e:this.T(v.createTextNode(e)),this._$AH=e}$(e){let{values:t,_$litType$:s}=e,i=typeof s=="number"?this._$AC(e):(s.el===void 0&&(s.el=M.createElement(we(s.h,s.h[0]),this.options)),s);if(this._$AH?._$AD===i)this._$AH.p(t);else{let r=new q(i,this),o=r.u(this.options);r.p(t),this.T(o),this._$AH=r}}_$AC(e){let t=_e.get(e.strings);return t===void 0&&_e.set(e.strings,t=new M(e)),t}k(e){X(this._$AH)||(this._$AH=[],this._$AR());let t=this._$AH,s,i=0;for(let r of e)i===t.length?t.push(s=new n(this.O(C()),this.O(C()),this,this.options)):s=t[i],s._$AI(r),i++;i<t.length&&(this._$AR(s&&s._$AB.nextSibling,i),t.length=i)}_$AR(e=this._$AA.nextSibling,t){for(this._$AP?.(!1,!0,t);e!==this._$AB;){let s=ue(e).nextSibling;ue(e).remove(),e=s}}setConnected(e){this._$AM===void 0&&(this._$Cv=e,this._$AP?.(e))}},w=class{get tagName(){return this.element.tagName}get _$AU(){return this._$AM._$AU}constructor(e,t,s,i,r){this.type=1,this._$AH=c,this._$AN=void 0,this.element=e,this.name=t,this._$AM=i,this.options=r,s.length>2||s[0]!==""||s[1]!==""?(this._$AH=Array(s.length-1).fill(new String),this.strings=s):this._$AH=c}_$AI(e,t=this,s,i){let r=this.strings,o=!1;if(r===void 0)e=b(this,e,t,0),o=!R(e)||e!==this._$AH&&e!==A,o&&(this._$AH=e);else{let d=e,a,l;for(e=r[0],a=0;a<r.length-1;a++)l=b(this,d[s+a],t,a),l===A&&(l=this._$AH[a]),o||=!R(l)||l!==this._$AH[a],l===c?e=c:e!==c&&(e+=(l??"")+r[a+1]),this._$AH[a]=l}o&&!i&&this.j(e)}j(e){e===c?this.element.removeAttribute(this.name):this.element.setAttribute(this.name,e??"")}},K=class extends w{constructor(){super(...arguments),this.type=3}j(e){this.element[this.name]=e===c?void 0:e}},V=class extends w{constructor(){super(...arguments),this.type=4}j(e){this.element.toggleAttribute(this.name,!!e&&e!==c)}},W=class extends w{constructor(e,t,s,i,r){super(e,t,s,i,r),this.type=5}_$AI(e,t=this){if((e=b(this,e,t,0)??c)===A)return;let s=this._$AH,i=e===c&&s!==c||e.capture!==s.capture||e.once!==s.once||e.passive!==s.passive,r=e!==c&&(s===c||i);i&&this.element.removeEventListener(this.name,this,s),r&&this.element.addEventListener(this.name,this,e),this._$AH=e}handleEvent(e){typeof this._$AH=="function"?this._$AH.call(this.options?.host??this.element,e):this._$AH.handleEvent(e)}},F=class{constructor(e,t,s){this.element=e,this.type=6,this._$AN=void 0,this._$AM=t,this.options=s}get _$AU(){return this._$AM._$AU}_$AI(e){b(this,e)}};var Be=J.litHtmlPolyfillSupport;Be?.(M,k),(J.litHtmlVersions??=[]).push("3.3.3");var Ee=(n,e,t)=>{let s=t?.renderBefore??e,i=s._$litPart$;if(i===void 0){let r=t?.renderBefore??null;s._$litPart$=i=new k(e.insertBefore(C(),r),r,void 0,t??{})}return i._$AI(n),i};var G=globalThis,y=class extends f{constructor(){super(...arguments),this.renderOptions={host:this},this._$Do=void 0}createRenderRoot(){let e=super.createRenderRoot();return this.renderOptions.renderBefore??=e.firstChild,e}update(e){let t=this.render();this.hasUpdated||(this.renderOptions.isConnected=this.isConnected),super.update(e),this._$Do=Ee(t,this.renderRoot,this.renderOptions)}connectedCallback(){super.connectedCallback(),this._$Do?.setConnected(!0)}disconnectedCallback(){super.disconnectedCallback(),this._$Do?.setConnected(!1)}render(){return A}};y._$litElement$=!0,y.finalized=!0,G.litElementHydrateSupport?.({LitElement:y});var Ie=G.litElementPolyfillSupport;Ie?.({LitElement:y});(G.litElementVersions??=[]).push("4.2.2");var Q="latest",qe=["right","left"],Ke=[Q,"baseline"];function ee(n){return Ke.flatMap(e=>qe.map(t=>({ear:t,series:e}))).filter(e=>n.some(t=>re(t,e)))}function te(n,e){return n.find(t=>se(t,e))}function se(n,e){return re(n,e)&&n.hertz===e.hertz}function z(n){let e=ee(n)[0];return e&&E(e,ne(n,e)[0])}function xe(n,e,t){let s=ne(n,e),i=s.indexOf(e.hertz);switch(t){case"lower":return E(e,s[i-1])??e;case"higher":return E(e,s[i+1])??e;case"lowest":return E(e,s[0])??e;case"highest":return E(e,s[s.length-1])??e;case"previous-trace":return Se(n,e,-1);case"next-trace":return Se(n,e,1)}}function Pe(n,e){return[e,{...e,series:Q}].find(s=>te(n,s))??z(n)}function Ce(n,e){let t=Math.min(...n.map(i=>i.distance));if(t>e)return[];let s=n.filter(i=>i.distance<t+1);return ee(s).filter((i,r,o)=>o.findIndex(d=>d.ear===i.ear)===r).flatMap(i=>E(i,ne(s,i)[0])??[])}function ie(n,e){let t=te(n,e);if(!t)return"";let s=`${Ve(t.ear)} ear, ${t.hertz} Hz, `,i=n.filter(o=>o.ear===t.ear&&o.hertz===t.hertz&&o.series!==t.series),r=t.series===Q?t.words:`${t.series} ${t.words}`;return s+[r,...i.map(o=>`${o.series} ${o.words}`)].join("; ")}function Se(n,e,t){let s=ee(n),i=s.findIndex(o=>o.ear===e.ear&&o.series===e.series),r={...e,...s[(i+t+s.length)%s.length]};return te(n,r)?r:e}function ne(n,e){return n.filter(t=>re(t,e)).map(t=>t.hertz).sort((t,s)=>t-s)}function E(n,e){return e===void 0?void 0:{ear:n.ear,series:n.series,hertz:e}}function re(n,e){return n.ear===e.ear&&n.series===e.series}function Ve(n){return n.charAt(0).toUpperCase()+n.slice(1)}var We={ArrowLeft:"lower",ArrowRight:"higher",Home:"lowest",End:"highest",ArrowUp:"previous-trace",ArrowDown:"next-trace"},Fe={PageUp:-1,PageDown:1},Je=24,oe=class extends y{constructor(){super();this.readings=[];this.drawingChanges=new MutationObserver(()=>this.readDrawing());this.chosen=void 0,this.pointed=[],this.spoken=""}static{this.styles=D`
    :host {
      display: inline-block;
      position: relative;
      max-inline-size: 100%;
    }

    /* Never stretched: the drawing shrinks as a whole where the page is narrow. */
    ::slotted(svg) {
      display: block;
      max-inline-size: 100%;
      block-size: auto;
    }

    .stage {
      position: relative;
      border-radius: var(--tr-radius, 3px);
      touch-action: manipulation;
    }

    /* The outline shows where the system replaces colours and drops shadows. */
    .stage:focus-visible {
      outline: 2px solid transparent;
      box-shadow: var(--tr-focus, 0 0 0 2px canvas, 0 0 0 4px currentcolor);
    }

    .ring {
      position: absolute;
      inline-size: 24px;
      block-size: 24px;
      box-sizing: border-box;
      margin: -12px;
      border: 2px solid currentcolor;
      border-radius: 50%;
      pointer-events: none;
    }

    @media (prefers-reduced-motion: no-preference) {
      .ring {
        transition:
          left 120ms ease-out,
          top 120ms ease-out;
      }
    }

    .readout {
      margin: 8px 0 0;
      min-block-size: 2.8em;
      line-height: 1.4;
      font-variant-numeric: tabular-nums;
    }

    .spoken {
      position: absolute;
      inline-size: 1px;
      block-size: 1px;
      overflow: hidden;
      clip-path: inset(50%);
      white-space: nowrap;
    }

    .readout span {
      display: block;
    }

    [hidden] {
      display: none;
    }

    @media print {
      :host {
        color-scheme: light;
        color: #1a1a1a;
        break-inside: avoid;
      }

      .ring,
      .readout {
        display: none;
      }
    }
  `}static{this.properties={chosen:{state:!0},pointed:{state:!0},spoken:{state:!0}}}connectedCallback(){super.connectedCallback(),this.drawingChanges.observe(this,{childList:!0,subtree:!0}),this.readDrawing()}disconnectedCallback(){this.drawingChanges.disconnect(),super.disconnectedCallback()}render(){let t=this.shown();return Z`
      <div
        class="stage"
        tabindex="0"
        role="application"
        aria-roledescription="audiogram reader"
        aria-label="Read the audiogram point by point"
        aria-describedby="keys"
        @keydown=${this.onKey}
        @focus=${this.onFocus}
        @pointermove=${this.onPoint}
        @pointerleave=${this.onLeave}
        @click=${this.onClick}
      >
        <slot></slot>
        <div class="ring" aria-hidden="true" hidden></div>
      </div>
      <p class="readout" aria-hidden="true">
        ${t.length===0?"Point at a symbol, or use the arrow keys.":t.map(s=>Z`<span>${ie(this.readings,s)}</span>`)}
      </p>
      <div class="spoken" id="keys">
        Left and Right move by frequency, Up and Down to the other ear and the baseline, Page Up and Page Down to the test
        before or after.
      </div>
      <div class="spoken" aria-live="polite">${this.spoken}</div>
    `}updated(){let t=this.renderRoot.querySelector(".ring"),[s]=this.shown(),i=s&&this.readings.find(o=>se(o,s)),r=i&&Re(i.element);if(t.hidden=!r,r){let o=this.stage.getBoundingClientRect();t.style.left=`${(r.x-o.left)/o.width*100}%`,t.style.top=`${(r.y-o.top)/o.height*100}%`}}shown(){return this.pointed.length>0||!this.chosen?this.pointed:[this.chosen]}readDrawing(){this.readings=[...this.querySelectorAll("[data-ear][data-hz]")].map(t=>({element:t,ear:t.getAttribute("data-ear")??"",series:t.getAttribute("data-series")??"",hertz:Number(t.getAttribute("data-hz")),words:t.getAttribute("data-words")??""})),this.pointed=[],this.chosen&&this.choose(Pe(this.readings,this.chosen))}choose(t){this.chosen=t,this.spoken=t?ie(this.readings,t):""}onFocus(){!this.chosen&&this.stage.matches(":focus-visible")&&this.choose(z(this.readings))}onKey(t){if(t.altKey||t.ctrlKey||t.metaKey||t.shiftKey)return;let s=Fe[t.key],i=We[t.key];s!==void 0?(t.preventDefault(),this.dispatchEvent(new CustomEvent("audiogram-step",{detail:s,bubbles:!0,composed:!0}))):i!==void 0&&(t.preventDefault(),this.pointed=[],this.choose(this.chosen?xe(this.readings,this.chosen,i):z(this.readings)))}onPoint(t){this.pointed=this.under(t)}onLeave(){this.pointed=[]}onClick(t){let[s]=this.under(t);s&&this.choose(s)}under(t){let s=this.readings.flatMap(i=>{let r=Re(i.element);return r?[{...i,distance:Math.hypot(t.clientX-r.x,t.clientY-r.y)}]:[]});return Ce(s,Je)}get stage(){return this.renderRoot.querySelector(".stage")}};function Re(n){let e=(n.querySelector("circle, .cross")??n).getBoundingClientRect();return e.width>0?{x:e.left+e.width/2,y:e.top+e.height/2}:void 0}customElements.define("audiogram-reader",oe);export{oe as AudiogramReader};
/*! Bundled license information:

@lit/reactive-element/css-tag.js:
  (**
   * @license
   * Copyright 2019 Google LLC
   * SPDX-License-Identifier: BSD-3-Clause
   *)

@lit/reactive-element/reactive-element.js:
lit-html/lit-html.js:
lit-element/lit-element.js:
  (**
   * @license
   * Copyright 2017 Google LLC
   * SPDX-License-Identifier: BSD-3-Clause
   *)

lit-html/is-server.js:
  (**
   * @license
   * Copyright 2022 Google LLC
   * SPDX-License-Identifier: BSD-3-Clause
   *)
*/
